package walebook.desk.common;

import java.text.BreakIterator;
import java.util.Locale;
import javafx.scene.text.Font;
import javafx.scene.text.Text;

/**
 * Breaks text into lines where the toolkit does it badly: letters that are shaped together, or
 * taken from another typeface, are drawn past the end of their line and once more on the next.
 */
final class BrokenLines {
  /** Up to here every letter stands for itself. */
  private static final int LAST_PLAIN = 0x24F;

  /** Dashes, quotes, dots and arrows: not shaped either. */
  private static final int FIRST_SIGN = 0x2010;

  private static final int LAST_SIGN = 0x22FF;

  private BrokenLines() {}

  /** Whether the toolkit can be trusted with the text. */
  static boolean isPlain(String text) {
    return text.codePoints()
        .allMatch(each -> each <= LAST_PLAIN || (each >= FIRST_SIGN && each <= LAST_SIGN));
  }

  /**
   * The text with line breaks so that no line is wider than it may be; plain text stays as it is.
   *
   * @param wide px
   */
  static String of(String text, Font font, double wide) {
    if (isPlain(text) || wide <= 0) {
      return text;
    }
    BreakIterator breaks = BreakIterator.getLineInstance(Locale.ROOT);
    breaks.setText(text);
    StringBuilder all = new StringBuilder();
    String line = "";
    int from = breaks.first();
    for (int to = breaks.next(); to != BreakIterator.DONE; from = to, to = breaks.next()) {
      String word = text.substring(from, to);
      if (!line.isEmpty() && width(line + word.stripTrailing(), font) > wide) {
        all.append(line.stripTrailing()).append('\n');
        line = "";
      }
      line += word;
    }
    return all.append(line).toString();
  }

  private static double width(String line, Font font) {
    Text measured = new Text(line);
    measured.setFont(font);
    return measured.getLayoutBounds().getWidth();
  }
}
