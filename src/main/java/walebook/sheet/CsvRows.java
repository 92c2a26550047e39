package walebook.sheet;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.function.IntConsumer;
import java.util.function.UnaryOperator;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import walebook.words.Words;

/**
 * The same tables as comma-separated text (RFC 4180): header with units, decimal point, ISO dates.
 * Words that a spreadsheet would take for a formula get an apostrophe in front, since a CSV file
 * has no other way to say that they are words.
 */
public final class CsvRows {
  private CsvRows() {}

  /**
   * Writes header and rows.
   *
   * @param cover takes names out of words where they are not wanted
   * @param done told after each row how many there are
   */
  public static <T> void write(
      Appendable out,
      List<Column<T>> columns,
      Iterable<T> rows,
      UnaryOperator<String> cover,
      Words words,
      IntConsumer done)
      throws IOException {
    CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180);
    printer.printRecord(columns.stream().map(column -> guarded(column.title(words))));
    int written = 0;
    for (T row : rows) {
      printer.printRecord(
          columns.stream().map(column -> text(column.format(), column.value().apply(row), cover)));
      done.accept(++written);
    }
    printer.flush();
  }

  private static String text(Format format, Value value, UnaryOperator<String> cover) {
    if (value instanceof Value.Text text) {
      return guarded(cover.apply(text.text()));
    }
    if (value instanceof Value.Figure figure) {
      return number(format, figure.number());
    }
    if (value instanceof Value.Day day) {
      return day.date().toString();
    }
    return value instanceof Value.Moment moment ? moment.time().toString() : "";
  }

  private static String guarded(String text) {
    String clean = CellText.clean(text);
    return CellText.looksLikeFormula(clean) ? "'" + clean : clean;
  }

  /** Worked-out numbers hold more digits than they know; ten places lose none that matter. */
  private static String number(Format format, double number) {
    if (format.isWhole() && number == Math.rint(number)) {
      return BigDecimal.valueOf(number).setScale(0, RoundingMode.HALF_UP).toPlainString();
    }
    BigDecimal rounded = BigDecimal.valueOf(number).setScale(10, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
