package walebook.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import walebook.record.Parent;
import walebook.words.Words;

/**
 * What was changed against the piece before, in the names that the form's fields have, such as
 * {@code stitch width; needle point}; what was changed by hand comes last, behind the name of its
 * field. It is read back from these words, and from keys.
 */
public final class ChangedText {
  private static final String FIELD = "desk.pieces.field.";
  private static final String BY_HAND = "other-change";
  private static final String BETWEEN = "; ";

  private final Words words;

  public ChangedText(Words words) {
    this.words = words;
  }

  /** In words; empty when nothing was changed. */
  public String says(Parent parent) {
    if (!parent.keys().stream().allMatch(key -> words.has(FIELD + key))) {
      // No form wrote it: words of somebody's own stay as they are.
      return parent.changed();
    }
    List<String> all = new ArrayList<>();
    parent.keys().forEach(key -> all.add(words.say(FIELD + key)));
    if (!parent.byHand().isEmpty()) {
      all.add(words.say(FIELD + BY_HAND) + ": " + parent.byHand());
    }
    return String.join(BETWEEN, all);
  }

  /**
   * What was typed or written out; words that name no field were changed by hand.
   *
   * @param fields keys of the settings that a form has
   */
  public Parent read(UUID pieceId, String text, Set<String> fields) {
    Parent plain = new Parent(pieceId, text.strip());
    if (fields.containsAll(plain.keys())) {
      return plain;
    }
    Map<String, String> keys = new HashMap<>();
    fields.forEach(key -> keys.put(key, key));
    fields.forEach(key -> keys.put(folded(words.say(FIELD + key)), key));
    List<String> known = new ArrayList<>();
    List<String> byHand = new ArrayList<>();
    String hand = folded(words.say(FIELD + BY_HAND)) + ":";
    String rest = text.strip();
    while (!rest.isEmpty() && !folded(rest).startsWith(hand)) {
      int end = (rest + ";").indexOf(';');
      String one = rest.substring(0, end).strip();
      List<String> parts = Arrays.stream(one.split(",", -1)).map(ChangedText::folded).toList();
      if (keys.keySet().containsAll(parts)) {
        parts.forEach(each -> known.add(keys.getOrDefault(each, each)));
      } else {
        byHand.add(one);
      }
      rest = rest.substring(Math.min(rest.length(), end + 1)).strip();
    }
    if (!rest.isEmpty()) {
      byHand.add(rest.substring(hand.length()).strip());
    }
    return Parent.of(pieceId, known, String.join(BETWEEN, byHand));
  }

  private static String folded(String text) {
    return text.strip().toLowerCase(Locale.ROOT);
  }
}
