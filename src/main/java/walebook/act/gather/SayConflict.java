package walebook.act.gather;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import walebook.book.gather.Conflict;
import walebook.cloth.FabricKind;
import walebook.compare.assessed.MarkWords;
import walebook.garment.GarmentKind;
import walebook.garment.LinkKind;
import walebook.garment.NeckShape;
import walebook.quantity.Show;
import walebook.record.CheckedBy;
import walebook.record.Help;
import walebook.record.Keyed;
import walebook.record.Mark;
import walebook.record.Marking;
import walebook.record.Parent;
import walebook.record.PieceCode;
import walebook.seam.Fault;
import walebook.seam.StitchType;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** A conflict in words: what it is about, what differs, and each value with its unit. */
public final class SayConflict {
  private static final int USUAL_DECIMALS = 2;

  /** A double has no more than these that could differ, of numbers as they are measured. */
  private static final int MOST_DECIMALS = 17;

  private final Words words;
  private final SharedTables tables;

  public SayConflict(Words words, SharedTables tables) {
    this.words = words;
    this.tables = tables;
  }

  /** What it is about, such as cloth Grey jersey, or a check of a piece (K7Q-2MX). */
  public String title(Conflict conflict) {
    String key = "act.thing." + hyphened(conflict.entity());
    String name = called(conflict.title());
    String thing = words.say(key, name).strip();
    boolean isNamed = name.isEmpty() || !thing.equals(words.say(key, "").strip());
    return isNamed ? thing : words.say("act.gather.titled", thing, name);
  }

  /** What a field that differs is called. */
  public String name(Conflict conflict, Conflict.Field field) {
    return name(conflict.entity(), field.name());
  }

  private String name(String table, String column) {
    String own = "act.gather.name." + hyphened(table) + "." + hyphened(column);
    String key = words.has(own) ? own : "act.gather.name." + hyphened(column);
    return words.has(key) ? words.say(key) : column.replace('_', ' ');
  }

  /** One side of a field: a line, or one for each part such as a pull. */
  public String side(List<List<Conflict.Value>> side, Conflict conflict, Conflict.Field field) {
    if (side.isEmpty()) {
      boolean all = ConflictColumns.find(conflict.entity(), field.name()) == ColumnMeaning.MARKS;
      return words.say(all ? "compare.marking.all" : "act.gather.value.nothing");
    }
    boolean isColumn = side.size() == 1 && side.get(0).size() == 1 && !isPart(side, field);
    int decimals = decimals(field);
    return isColumn
        ? value(side.get(0).get(0), decimals)
        : side.stream().map(row -> part(row, decimals)).collect(Collectors.joining("\n"));
  }

  /** As few as tell every number of the two sides from the others of its column. */
  private static int decimals(Conflict.Field field) {
    int decimals = USUAL_DECIMALS;
    Map<String, Set<Double>> numbers = numbers(field);
    while (decimals < MOST_DECIMALS && !tells(numbers, decimals)) {
      decimals++;
    }
    return decimals;
  }

  private static boolean tells(Map<String, Set<Double>> numbers, int decimals) {
    return numbers.values().stream()
        .allMatch(
            all ->
                all.stream().map(each -> Show.upTo(each, decimals)).distinct().count()
                    == all.size());
  }

  private static Map<String, Set<Double>> numbers(Conflict.Field field) {
    Map<String, Set<Double>> numbers = new HashMap<>();
    Stream.of(field.mine(), field.theirs())
        .flatMap(List::stream)
        .flatMap(List::stream)
        .filter(each -> !meaning(each).withUnit().isEmpty())
        .forEach(
            each -> {
              Double number = number(each.text());
              if (number != null) {
                numbers.computeIfAbsent(each.column(), column -> new HashSet<>()).add(number);
              }
            });
    return numbers;
  }

  private static boolean isPart(List<List<Conflict.Value>> side, Conflict.Field field) {
    return side.get(0).get(0).table().equals(field.name());
  }

  /** A part in one line, such as pull 1, it gave at, pulled to 140 mm. */
  private String part(List<Conflict.Value> row, int decimals) {
    List<String> says = new ArrayList<>();
    for (Conflict.Value each : row) {
      boolean isPlain =
          switch (meaning(each)) {
            case CHOICE, STITCH, FAULT, GIRTH, GARMENT_EDGE, LINK, SEVERITY, SEAMS -> true;
            default -> false;
          };
      String value = value(each, decimals);
      says.add(
          isPlain ? value : words.say("act.gather.part", name(each.table(), each.column()), value));
    }
    return String.join(", ", says);
  }

  private static ColumnMeaning meaning(Conflict.Value value) {
    ColumnMeaning known = ConflictColumns.find(value.table(), value.column());
    return known == null ? ColumnMeaning.AS_IS : known;
  }

  /** A value in words, a number with its unit. */
  String value(Conflict.Value value) {
    return value(value, USUAL_DECIMALS);
  }

  private String value(Conflict.Value value, int decimals) {
    ColumnMeaning meaning = meaning(value);
    String text = value.text();
    if (!meaning.withUnit().isEmpty()) {
      Double number = number(text);
      return words.say(meaning.withUnit(), number == null ? text : Show.upTo(number, decimals));
    }
    return switch (meaning) {
      case THING -> text.isEmpty() ? words.say("act.gather.value.not-here") : called(text);
      case YES_NO -> words.say(text.equals("0") ? "act.gather.value.no" : "act.gather.value.yes");
      case LONG_TEXT -> words.say("act.gather.value.long", text.lines().count(), text.length());
      case UNSAID -> words.say("act.gather.value.another");
      case CHOICE -> choice("common.choice." + text, text);
      case GRADE -> choice("desk.pieces.grade." + text, text);
      case SEVERITY -> choice("desk.pieces.severity." + text, text);
      case WEAR -> choice("desk.decide.choice.wear." + text, text);
      case GIRTH -> choice("garment.girth." + text, text);
      case GARMENT_EDGE -> choice("garment.edge." + text, text);
      case MARKED_VALUE -> choice("compare.value." + text, text);
      default -> ofTables(meaning, text);
    };
  }

  private String ofTables(ColumnMeaning meaning, String text) {
    return switch (meaning) {
      case CHANGED -> changed(text);
      case MARKS -> marks(text);
      case HELP -> {
        Help help = Keyed.find(Help.class, text);
        yield help == null ? text : words.say(MarkWords.of(help));
      }
      case CHECKED_BY -> {
        CheckedBy by = Keyed.find(CheckedBy.class, text);
        yield by == null ? text : words.say(MarkWords.of(by));
      }
      case VALUE_MARK -> valueMark(text);
      case PICTURE_KIND ->
          words.say(
              text.endsWith("png") ? "act.gather.value.drawing" : "act.gather.value.photograph");
      case LINK ->
          Arrays.stream(LinkKind.values())
              .filter(each -> each.key().equals(text))
              .map(each -> words.say(each.sayKey()))
              .findFirst()
              .orElse(text);
      case STITCH -> row(tables.stitchTypes(), text, StitchType::key, StitchType::name);
      case FAULT -> row(tables.faults(), text, Fault::key, Fault::name);
      case CLOTH_KIND -> row(tables.fabricKinds(), text, FabricKind::key, FabricKind::name);
      case GARMENT_KIND -> row(tables.garment().kinds(), text, GarmentKind::key, GarmentKind::name);
      case SHAPE -> row(tables.garment().neckShapes(), text, NeckShape::key, NeckShape::name);
      default -> text;
    };
  }

  private String valueMark(String text) {
    Mark mark = Keyed.find(Mark.class, text);
    if (mark == null) {
      return text;
    }
    return words.say(
        switch (mark) {
          case KEPT -> "act.gather.value.kept";
          case MISTYPED -> "act.gather.value.mistyped";
          case SET_ASIDE -> "act.gather.value.set-aside";
        });
  }

  private String changed(String text) {
    Parent parent = new Parent(new UUID(0, 0), text);
    List<String> says = new ArrayList<>();
    for (String each : parent.keys()) {
      says.add(choice("desk.pieces.field." + each, each));
    }
    if (!parent.byHand().isEmpty()) {
      says.add(parent.byHand());
    }
    return String.join(", ", says);
  }

  /** Which of the five marks count, kept as the sum of 1, 2, 4, 8 and 16. */
  private String marks(String text) {
    int bits;
    try {
      bits = Integer.parseInt(text);
    } catch (NumberFormatException e) {
      return text;
    }
    List<String> counted = new ArrayList<>();
    for (Marking each : Marking.values()) {
      if ((bits & flag(each)) != 0) {
        counted.add(words.say(MarkWords.of(each)));
      }
    }
    return counted.size() == Marking.values().length
        ? words.say("compare.marking.all")
        : String.join(", ", counted);
  }

  private static int flag(Marking marking) {
    return switch (marking) {
      case CHOICE -> 1;
      case TECHNIQUE -> 2;
      case PERFORMANCE -> 4;
      case FINISH -> 8;
      case REASONING -> 16;
    };
  }

  private static @Nullable Double number(String text) {
    try {
      return Double.valueOf(text);
    } catch (NumberFormatException e) {
      return null;
    }
  }

  private static String called(String text) {
    return PieceCode.isCode(text) ? PieceCode.spoken(text) : text;
  }

  private String choice(String key, String text) {
    return words.has(key) ? words.say(key) : text;
  }

  private static <T> String row(
      List<T> rows, String key, Function<T, String> keyOf, Function<T, String> nameOf) {
    return rows.stream()
        .filter(each -> keyOf.apply(each).equals(key))
        .map(nameOf)
        .findFirst()
        .orElse(key);
  }

  private static String hyphened(String name) {
    return name.replace('_', '-');
  }
}
