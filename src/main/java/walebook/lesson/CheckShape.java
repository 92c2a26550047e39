package walebook.lesson;

import com.networknt.schema.Error;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import walebook.problem.Problem;
import walebook.quantity.Show;

/** Holds pack.yaml against the schema and says each mistake at its line, in our own words. */
final class CheckShape {
  private static final Pattern COMMA = Pattern.compile("-?[0-9]+,[0-9]+");
  private static final Pattern WITH_UNIT = Pattern.compile("-?[0-9]+(?:[.][0-9]+)? \\p{L}+");

  private final PackSchema schema;

  CheckShape(PackSchema schema) {
    this.schema = schema;
  }

  List<Problem> check(YamlDoc doc) {
    List<Error> errors = schema.errors(doc.root());
    List<Problem> problems = new ArrayList<>();
    Set<String> meant = new HashSet<>();
    for (Error error : errors) {
      if (error.getKeyword().equals("additionalProperties")) {
        problems.add(unknown(doc, error, meant));
      }
    }
    for (Error error : errors) {
      if (error.getKeyword().equals("required")) {
        // A misspelt field has been told already, as what it was meant to be.
        if (!meant.contains(YamlDoc.under(pointer(error), error.getProperty()))) {
          problems.add(doc.missing(pointer(error), error.getProperty()));
        }
      } else if (!error.getKeyword().equals("additionalProperties")) {
        problems.add(value(doc, error));
      }
    }
    return problems;
  }

  private Problem unknown(YamlDoc doc, Error error, Set<String> meant) {
    String found = error.getProperty();
    String at = YamlDoc.under(pointer(error), found);
    List<String> known = schema.fieldsBeside(error);
    List<String> free = known.stream().filter(each -> !has(doc, error, each)).toList();
    String near = NearMiss.of(found, free);
    if (near == null) {
      return doc.atKey("pack.field-unknown", at, found, String.join(", ", known));
    }
    meant.add(YamlDoc.under(pointer(error), near));
    return doc.atKey("pack.field-unknown-near", at, found, near);
  }

  private static boolean has(YamlDoc doc, Error error, String field) {
    return doc.at(pointer(error)).has(field);
  }

  private Problem value(YamlDoc doc, Error error) {
    String at = pointer(error);
    String found = shown(doc.at(at));
    JsonNode limit = schema.holderOf(error).path(error.getKeyword());
    String size = String.valueOf(doc.at(at).size());
    if (doc.at(at).isNull()) {
      return doc.atValue("pack.value-missing", at, "", "");
    }
    return switch (error.getKeyword()) {
      case "type" -> type(doc, error, at, found);
      case "enum" -> choice(doc, at, found, limit);
      case "pattern" -> pattern(doc, error, at, found);
      case "minimum" -> doc.atValue("pack.too-small", at, found, shown(limit));
      case "exclusiveMinimum" -> doc.atValue("pack.not-above", at, found, shown(limit));
      case "maximum" ->
          doc.atValue(
              at.equals("/format") ? "pack.format" : "pack.too-large", at, found, shown(limit));
      case "minLength" -> doc.atValue("pack.text-empty", at, found, "");
      case "maxLength" -> doc.atValue("pack.text-long", at, length(doc.at(at)), shown(limit));
      case "minItems" -> doc.atValue("pack.list-short", at, size, shown(limit));
      case "maxItems" -> doc.atValue("pack.list-long", at, size, shown(limit));
      case "uniqueItems" -> doc.atValue("pack.list-repeats", at, repeated(doc.at(at)), "");
      default -> doc.atValue("pack.other", at, found, String.valueOf(error.getMessage()));
    };
  }

  private Problem type(YamlDoc doc, Error error, String at, String found) {
    JsonNode wanted = schema.holderOf(error).path("type");
    String type = wanted.isArray() ? "other" : wanted.asString();
    boolean number = type.equals("number") || type.equals("integer");
    if (number && COMMA.matcher(found).matches()) {
      return doc.atValue("pack.number-comma", at, found, found.replace(',', '.'));
    } else if (number && WITH_UNIT.matcher(found).matches()) {
      return doc.atValue("pack.number-unit", at, found, "");
    }
    String example = example(error);
    String wantedSo = example.isEmpty() ? '"' + found + '"' : example;
    return doc.atValue(typeCode(type), at, found, wantedSo);
  }

  /** A key near one of those known; else how what was typed would be written as one. */
  private Problem pattern(YamlDoc doc, Error error, String at, String found) {
    List<String> known = texts(schema.holderOf(error).path("examples"));
    String near = known.size() < 2 ? null : NearMiss.of(found, known);
    if (near != null) {
      return doc.atValue("pack.choice-near", at, found, near);
    }
    Pattern pattern = Pattern.compile(schema.holderOf(error).path("pattern").asString(""));
    String keyed = found.strip().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    String wanted = pattern.matcher(keyed).matches() ? keyed : example(error);
    return doc.atValue("pack.pattern", at, found, wanted);
  }

  private static Problem choice(YamlDoc doc, String at, String found, JsonNode limit) {
    List<String> choices = texts(limit);
    if (doc.at(at).isContainer()) {
      return doc.atValue("pack.want-one", at, found, String.join(", ", choices));
    }
    String near = NearMiss.of(found, choices);
    return near == null
        ? doc.atValue("pack.choice", at, found, String.join(", ", choices))
        : doc.atValue("pack.choice-near", at, found, near);
  }

  private static String typeCode(String type) {
    return switch (type) {
      case "string" -> "pack.want-text";
      case "integer" -> "pack.want-whole-number";
      case "number" -> "pack.want-number";
      case "array" -> "pack.want-list";
      case "object" -> "pack.want-fields";
      default -> "pack.want-number-or-text";
    };
  }

  private String example(Error error) {
    JsonNode examples = schema.holderOf(error).path("examples");
    return examples.isEmpty() ? "" : examples.get(0).asString();
  }

  private static @Nullable String repeatedOrNull(JsonNode list) {
    Set<JsonNode> seen = new HashSet<>();
    return StreamSupport.stream(list.spliterator(), false)
        .filter(each -> !seen.add(each))
        .map(CheckShape::shown)
        .findFirst()
        .orElse(null);
  }

  private static String repeated(JsonNode list) {
    String found = repeatedOrNull(list);
    return found == null ? "" : found;
  }

  private static String length(JsonNode text) {
    return String.valueOf(text.asString().length());
  }

  private static List<String> texts(JsonNode list) {
    return StreamSupport.stream(list.spliterator(), false)
        .map(JsonNode::asString)
        .collect(Collectors.toList());
  }

  /** A value as typed, near enough; lists and maps by their kind alone. */
  static String shown(JsonNode value) {
    if (value.isNumber()) {
      return Show.upTo(value.doubleValue(), 6);
    } else if (value.isContainer()) {
      return value.isArray() ? "[…]" : "{…}";
    } else if (value.isMissingNode() || value.isNull()) {
      return "";
    }
    return ReadRuns.firstLine(value.asString());
  }

  private static String pointer(Error error) {
    return String.valueOf(error.getInstanceLocation());
  }
}
