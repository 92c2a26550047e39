package walebook.sheet;

import java.util.regex.Pattern;

/** Words made fit for a cell: no signs that a file cannot hold, no formulas, not too long. */
final class CellText {
  /** The most signs a cell of a workbook takes (ECMA-376 Part 1 leaves it to programs). */
  static final int MOST = 32_767;

  /** ECMA-376 Part 1, ST_Xstring: this pattern stands for a sign, so it is itself escaped. */
  private static final Pattern ESCAPE = Pattern.compile("_(?=x[0-9A-Fa-f]{4}_)");

  private CellText() {}

  /** The words without control characters other than tab and line break, cut where too long. */
  static String clean(String text) {
    if (isPlain(text)) {
      return text;
    }
    StringBuilder kept = new StringBuilder(text.length());
    text.replace("\r\n", "\n")
        .replace('\r', '\n')
        .codePoints()
        .filter(CellText::isAllowed)
        .forEach(kept::appendCodePoint);
    if (kept.length() <= MOST) {
      return kept.toString();
    }
    int end = Character.isHighSurrogate(kept.charAt(MOST - 2)) ? MOST - 2 : MOST - 1;
    return kept.substring(0, end) + "…";
  }

  /** Most words are: looking is quicker than copying. */
  private static boolean isPlain(String text) {
    for (int i = 0; i < text.length(); i++) {
      char sign = text.charAt(i);
      if (sign < ' ' || (sign > '~' && sign < 0xA0) || sign >= Character.MIN_SURROGATE) {
        return false;
      }
    }
    return text.length() <= MOST;
  }

  /** Text as it must stand in the file for a reader to find it as it was. */
  static String escaped(String text) {
    return text.indexOf("_x") < 0 ? text : ESCAPE.matcher(text).replaceAll("_x005F_");
  }

  /** True when a program might take the words for a formula. */
  static boolean looksLikeFormula(String text) {
    return !text.isEmpty() && "=+-@\t\n＝＋－＠".indexOf(text.charAt(0)) >= 0;
  }

  private static boolean isAllowed(int sign) {
    boolean surrogate = sign >= Character.MIN_SURROGATE && sign <= Character.MAX_SURROGATE;
    boolean nonsense = (sign & 0xFFFE) == 0xFFFE;
    return sign == '\t' || sign == '\n' || !(Character.isISOControl(sign) || surrogate || nonsense);
  }
}
