package walebook.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.stream.Collectors;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.working.Message;

/**
 * The bundle of sentences, one file a room, placeholders {0}, {1} … filled as they stand. A missing
 * key is a mistake of ours: it shows as the key in brackets, and a test finds it.
 */
public final class Words {
  /** The bundle's files; each key begins with the name of its file. */
  public static final List<String> ROOMS =
      List.of(
          "problem", "common", "cloth", "seam", "garment", "kit", "lesson", "compare", "sheet",
          "paper", "drawing", "act", "command", "desk");

  private final Map<String, String> sentences;

  private Words(Map<String, String> sentences) {
    this.sentences = sentences;
  }

  /** Reads the English bundle from the program's resources. */
  public static Words english() {
    Map<String, String> all = new TreeMap<>();
    for (String room : ROOMS) {
      all.putAll(room(room));
    }
    return new Words(all);
  }

  private static Map<String, String> room(String room) {
    Map<String, String> sentences = new TreeMap<>();
    try (InputStream in = Words.class.getResourceAsStream(room + ".properties")) {
      if (in == null) {
        return sentences;
      }
      Properties read = new Properties();
      read.load(new InputStreamReader(in, StandardCharsets.UTF_8));
      read.stringPropertyNames().forEach(key -> sentences.put(key, read.getProperty(key)));
      return sentences;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Every key with its sentence, in order. */
  public Map<String, String> all() {
    return Map.copyOf(sentences);
  }

  public boolean has(String key) {
    return sentences.containsKey(key);
  }

  /** The sentence of a key, its places filled in order. */
  public String say(String key, Object... args) {
    String sentence = sentences.get(key);
    if (sentence == null) {
      return "[" + key + "]";
    }
    for (int i = 0; i < args.length; i++) {
      sentence = sentence.replace("{" + i + "}", argument(String.valueOf(args[i])));
    }
    return sentence;
  }

  /** A name given by its key ({@link Message#name}) is said in its own words. */
  private String argument(String text) {
    String named = text.startsWith("@") ? sentences.get(text.substring(1)) : null;
    return named == null ? text : named;
  }

  public String say(Message message) {
    return say(message.key(), message.args().toArray());
  }

  /** A problem as one sentence: where, what was found, what is wanted. */
  public String say(Problem problem) {
    String where = where(problem.place());
    String what = say("problem." + problem.code(), found(problem), problem.wanted());
    return where.isEmpty() ? what : where + ": " + what;
  }

  /** The sentence of a problem without its place, for a form that shows it at the field. */
  public String sayAtField(Problem problem) {
    return say("problem." + problem.code(), found(problem), problem.wanted());
  }

  /** Fields that were found are said by their names, as the place of a problem is. */
  private String found(Problem problem) {
    return problem.code().equals("change.several")
        ? Arrays.stream(problem.found().split(", ", -1))
            .map(this::field)
            .collect(Collectors.joining(", "))
        : problem.found();
  }

  private String field(String name) {
    String key = "problem.field." + name;
    return has(key) ? say(key) : name;
  }

  private String where(Place place) {
    if (place instanceof Place.Field field) {
      return field(field.name());
    }
    if (place instanceof Place.Spot spot) {
      String at = spot.file() + (spot.line() > 0 ? ":" + spot.line() + ":" + spot.column() : "");
      return spot.field().isEmpty() ? at : at + ": " + spot.field();
    }
    if (place instanceof Place.Path path) {
      return path.path();
    }
    if (place instanceof Place.Cell cell) {
      return cell.sheet() + "!" + cell.column() + cell.row();
    }
    return "";
  }
}
