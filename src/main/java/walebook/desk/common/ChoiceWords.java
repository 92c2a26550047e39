package walebook.desk.common;

import java.util.List;
import java.util.function.Function;
import walebook.garment.LinkKind;
import walebook.garment.NeckShape;
import walebook.garment.OpeningMargin;
import walebook.seam.StitchType;
import walebook.tables.SharedTables;
import walebook.words.Words;
import walebook.working.Input;

/** How inputs and the words to choose from are called on screen. */
public final class ChoiceWords {
  private static final String KNOWN_BY = "-by";

  private final Words words;
  private final SharedTables tables;

  public ChoiceWords(Words words, SharedTables tables) {
    this.words = words;
    this.tables = tables;
  }

  /** The label of an input with its unit. */
  public String label(CheckInput input) {
    String says = name(input.input());
    return input.sign().isEmpty() ? says : words.say("desk.decide.with-unit", says, input.sign());
  }

  private String name(Input input) {
    if (input.name().endsWith(KNOWN_BY)) {
      String link = input.name().substring(0, input.name().length() - KNOWN_BY.length());
      for (LinkKind kind : LinkKind.values()) {
        if (kind.key().equals(link)) {
          return words.say("desk.decide.known-by", words.say(kind.sayKey()));
        }
      }
    }
    return words.say(input.says());
  }

  /** A choice in plain words; its own key where that is what people say, as with units. */
  public String choice(Input input, String key) {
    String family = input.name().endsWith(KNOWN_BY) ? "by" : input.name();
    return switch (family) {
      case "shape" -> row(tables.garment().neckShapes(), key, NeckShape::key, NeckShape::name);
      case "garment" ->
          row(tables.garment().margins(), key, OpeningMargin::key, OpeningMargin::name);
      case "stitch" -> stitch(key);
      default -> {
        String sentence = "desk.decide.choice." + family + "." + key;
        yield words.has(sentence) ? words.say(sentence) : key;
      }
    };
  }

  private String stitch(String number) {
    String name = row(tables.stitchTypes(), number, StitchType::key, StitchType::name);
    return name.equals(number) ? number : words.say("desk.decide.stitch", number, name);
  }

  private static <T> String row(
      List<T> rows, String key, Function<T, String> keyOf, Function<T, String> nameOf) {
    return rows.stream()
        .filter(each -> keyOf.apply(each).equals(key))
        .map(nameOf)
        .findFirst()
        .orElse(key);
  }
}
