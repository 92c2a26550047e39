package walebook.sheet;

import java.util.function.UnaryOperator;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;

/**
 * Writes values into cells: the type follows the value, and words are always words.
 *
 * @param cover takes names out of words where they are not wanted
 */
record Pen(Styles styles, UnaryOperator<String> cover) {
  /** Before this year spreadsheets know no dates, so the day is written out. */
  static final int FIRST_YEAR = 1900;

  void write(Row row, int column, Format format, Value value) {
    if (value instanceof Value.Text text) {
      words(row, column, format, text.text());
    } else if (value instanceof Value.Figure figure) {
      cell(row, column, styles.of(format)).setCellValue(figure.number());
    } else if (value instanceof Value.Day day) {
      if (day.date().getYear() < FIRST_YEAR) {
        words(row, column, format, day.date().toString());
      } else {
        cell(row, column, styles.of(format)).setCellValue(day.date());
      }
    } else if (value instanceof Value.Moment moment) {
      cell(row, column, styles.of(format)).setCellValue(moment.time());
    }
  }

  /** Words of the book's people. */
  void words(Row row, int column, Format format, String text) {
    String clean = CellText.clean(cover.apply(text));
    CellStyle style = CellText.looksLikeFormula(clean) ? styles.quoted(format) : styles.of(format);
    cell(row, column, style).setCellValue(CellText.escaped(clean));
  }

  /** Words of our own, or with the names in them covered already. */
  void own(Row row, int column, CellStyle style, String text) {
    cell(row, column, style).setCellValue(CellText.escaped(CellText.clean(text)));
  }

  private static Cell cell(Row row, int column, CellStyle style) {
    Cell cell = row.createCell(column);
    cell.setCellStyle(style);
    return cell;
  }
}
