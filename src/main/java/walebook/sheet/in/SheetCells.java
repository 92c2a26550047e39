package walebook.sheet.in;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.xssf.eventusermodel.ReadOnlySharedStringsTable;
import org.apache.poi.xssf.model.StylesTable;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;

/** Turns what the file says of a cell into its value. */
final class SheetCells {
  private final ReadOnlySharedStringsTable strings;
  private final StylesTable styles;
  private final boolean from1904;
  private final Map<Integer, String> read = new HashMap<>();
  private final Map<String, Boolean> dates = new HashMap<>();

  SheetCells(ReadOnlySharedStringsTable strings, StylesTable styles, boolean from1904) {
    this.strings = strings;
    this.styles = styles;
    this.from1904 = from1904;
  }

  /**
   * The value of a cell.
   *
   * @param type attribute t of the cell; empty for a number
   * @param style attribute s
   * @param value what stands in v
   * @param inline what stands in is
   */
  InCell of(String type, String style, String value, String inline, boolean formula) {
    if (formula && value.isEmpty() && !type.equals("str")) {
      return new InCell(InCell.Kind.UNKNOWN, "", true);
    }
    return switch (type) {
      case "s" -> value.isBlank() ? InCell.EMPTY : words(shared(value.strip()), formula);
      case "inlineStr" -> words(decoded(inline), formula);
      case "str" -> words(decoded(value), formula);
      case "b" ->
          value.isBlank() ? InCell.EMPTY : words(value.strip().equals("1") ? "yes" : "no", formula);
      case "e" -> new InCell(InCell.Kind.ERROR, value.strip(), formula);
      case "d" -> words(value.strip(), formula);
      default -> value.isBlank() ? InCell.EMPTY : number(value.strip(), style, formula);
    };
  }

  private static InCell words(String text, boolean formula) {
    return text.isBlank() ? InCell.EMPTY : new InCell(InCell.Kind.TEXT, text, formula);
  }

  private String shared(String index) {
    return read.computeIfAbsent(Integer.valueOf(index), at -> strings.getItemAt(at).getString());
  }

  private static String decoded(String text) {
    return text.contains("_x") ? new XSSFRichTextString(text).getString() : text;
  }

  private InCell number(String value, String style, boolean formula) {
    double number = Double.parseDouble(value);
    if (!Double.isFinite(number)) {
      return new InCell(InCell.Kind.ERROR, value, formula);
    }
    if (!style.isEmpty() && dates.computeIfAbsent(style, this::isDate)) {
      LocalDate day = SerialDay.of(number, from1904);
      return day == null
          ? new InCell(InCell.Kind.NO_DAY, plain(number), formula)
          : new InCell(InCell.Kind.DAY, day.toString(), formula);
    }
    return new InCell(InCell.Kind.NUMBER, plain(number), formula);
  }

  private boolean isDate(String style) {
    int at = Integer.parseInt(style);
    XSSFCellStyle found = at < 0 || at >= styles.getNumCellStyles() ? null : styles.getStyleAt(at);
    return found != null
        && DateUtil.isADateFormat(found.getDataFormat(), found.getDataFormatString());
  }

  /** The shortest text that is the same number, so that nothing is lost on the way. */
  private static String plain(double number) {
    BigDecimal exact = BigDecimal.valueOf(number);
    return exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
  }
}
