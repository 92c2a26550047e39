package walebook.sheet;

import java.util.List;
import java.util.function.IntConsumer;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;

/** The rows of a table, one after the other, below its header. */
final class TableRows {
  private TableRows() {}

  /**
   * Writes them.
   *
   * @param done told after each row how many there are
   */
  static <T> void write(
      Sheet sheet, List<Column<T>> columns, Iterable<T> rows, Pen pen, IntConsumer done) {
    int at = 1;
    for (T each : rows) {
      Row row = sheet.createRow(at);
      for (int i = 0; i < columns.size(); i++) {
        Column<T> column = columns.get(i);
        pen.write(row, i, column.format(), column.value().apply(each));
      }
      done.accept(at);
      at++;
    }
  }
}
