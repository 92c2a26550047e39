package walebook.act.bring.match;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A header taken apart.
 *
 * @param words lower case, without accents and signs
 * @param unit the unit's sign where one stands in brackets or last; empty otherwise
 */
record HeaderText(List<String> words, String unit) {
  private static final Pattern BRACKETS = Pattern.compile("[(\\[{]\\s*([^)\\]}]*?)\\s*[)\\]}]");
  private static final Pattern MARKS = Pattern.compile("\\p{M}+");
  private static final Pattern BETWEEN_WORDS = Pattern.compile("[^\\p{L}\\p{N}%\"]+");

  HeaderText {
    words = List.copyOf(words);
  }

  static HeaderText of(String header) {
    String rest = header;
    String unit = "";
    Matcher brackets = BRACKETS.matcher(header);
    while (brackets.find()) {
      String inside = ColumnUnit.sign(brackets.group(1));
      if (!inside.isEmpty()) {
        unit = inside;
        rest = rest.replace(brackets.group(), " ");
      }
    }
    List<String> words = words(rest);
    if (unit.isEmpty() && words.size() > 1) {
      String last = ColumnUnit.sign(words.get(words.size() - 1));
      if (!last.isEmpty()) {
        unit = last;
        words = words.subList(0, words.size() - 1);
      }
    }
    return new HeaderText(words, unit);
  }

  static List<String> words(String text) {
    String plain =
        MARKS
            .matcher(Normalizer.normalize(text, Normalizer.Form.NFD))
            .replaceAll("")
            .toLowerCase(Locale.ROOT);
    return BETWEEN_WORDS.splitAsStream(plain).filter(each -> !each.isEmpty()).toList();
  }
}
