package walebook.sheet;

import java.util.EnumMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * The styles of a workbook, each made once. Body cells keep the program's own colours, so that they
 * can be read on light and dark; where a style sets a ground it sets the ink as well.
 */
final class Styles {
  private static final byte[] BLUE = {0x2F, 0x4B, (byte) 0x8F};
  private static final byte[] WHITE = {(byte) 0xFF, (byte) 0xFF, (byte) 0xFF};

  /** Words keep this far from the numbers at their left. */
  private static final short BESIDE_NUMBERS = 1;

  /** Degrees. */
  private static final short UPWARDS = 90;

  private final Map<Format, XSSFCellStyle> plain = new EnumMap<>(Format.class);
  private final Map<Format, XSSFCellStyle> quoted = new EnumMap<>(Format.class);
  private final Map<Format, XSSFCellStyle> left = new EnumMap<>(Format.class);
  private final XSSFCellStyle header;
  private final XSSFCellStyle quotedHeader;
  private final XSSFCellStyle numberHeader;
  private final XSSFCellStyle uprightHeader;
  private final XSSFCellStyle title;
  private final XSSFCellStyle label;

  Styles(XSSFWorkbook workbook) {
    for (Format format : Format.values()) {
      plain.put(format, body(workbook, format, false));
      quoted.put(format, body(workbook, format, true));
      XSSFCellStyle fromLeft = body(workbook, format, false);
      fromLeft.setAlignment(HorizontalAlignment.LEFT);
      fromLeft.setIndention(BESIDE_NUMBERS);
      left.put(format, fromLeft);
    }
    header = header(workbook);
    quotedHeader = header(workbook);
    quotedHeader.setQuotePrefixed(true);
    numberHeader = header(workbook);
    numberHeader.setAlignment(HorizontalAlignment.RIGHT);
    numberHeader.setIndention((short) 0);
    uprightHeader = header(workbook);
    uprightHeader.setRotation(UPWARDS);
    uprightHeader.setAlignment(HorizontalAlignment.CENTER);
    uprightHeader.setIndention((short) 0);
    // The filter's mark lies at the foot.
    uprightHeader.setVerticalAlignment(VerticalAlignment.TOP);
    title = bold(workbook, 16);
    label = bold(workbook, 11);
  }

  XSSFCellStyle of(Format format) {
    return get(plain, format);
  }

  /** For words that a program might take for a formula. */
  XSSFCellStyle quoted(Format format) {
    return get(quoted, format);
  }

  /** For numbers and dates that stand in one column with words. */
  XSSFCellStyle left(Format format) {
    return get(left, format);
  }

  XSSFCellStyle header(boolean looksLikeFormula) {
    return looksLikeFormula ? quotedHeader : header;
  }

  /** Over numbers, at the side where they stand. */
  XSSFCellStyle header(Format format, boolean looksLikeFormula) {
    if (format.isUpright()) {
      return uprightHeader;
    }
    return format.isWords() || looksLikeFormula ? header(looksLikeFormula) : numberHeader;
  }

  XSSFCellStyle title() {
    return title;
  }

  XSSFCellStyle label() {
    return label;
  }

  private static XSSFCellStyle get(Map<Format, XSSFCellStyle> styles, Format format) {
    return java.util.Objects.requireNonNull(styles.get(format));
  }

  private static XSSFCellStyle body(XSSFWorkbook workbook, Format format, boolean quoted) {
    XSSFCellStyle style = workbook.createCellStyle();
    style.setDataFormat(workbook.createDataFormat().getFormat(format.pattern()));
    style.setVerticalAlignment(VerticalAlignment.TOP);
    style.setWrapText(format.isWrapped());
    style.setQuotePrefixed(quoted);
    if (format.isWords()) {
      style.setAlignment(HorizontalAlignment.LEFT);
      style.setIndention(BESIDE_NUMBERS);
    }
    return style;
  }

  private static XSSFCellStyle header(XSSFWorkbook workbook) {
    XSSFFont font = workbook.createFont();
    font.setBold(true);
    font.setColor(new XSSFColor(WHITE.clone(), null));
    XSSFCellStyle style = workbook.createCellStyle();
    style.setFont(font);
    style.setFillForegroundColor(new XSSFColor(BLUE.clone(), null));
    style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    style.setVerticalAlignment(VerticalAlignment.CENTER);
    style.setAlignment(HorizontalAlignment.LEFT);
    style.setIndention(BESIDE_NUMBERS);
    style.setWrapText(true);
    return style;
  }

  private static XSSFCellStyle bold(XSSFWorkbook workbook, int points) {
    XSSFFont font = workbook.createFont();
    font.setBold(true);
    font.setFontHeightInPoints((short) points);
    XSSFCellStyle style = workbook.createCellStyle();
    style.setFont(font);
    style.setVerticalAlignment(VerticalAlignment.TOP);
    return style;
  }
}
