package walebook.sheet;

import java.util.List;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;

/** The rows of a table, one after the other, below its header. */
final class TableRows {
  /** Not every program makes a row as high as its words need. */
  static final float LINE_POINTS = 15;

  private static final int READ_ACROSS = 50;

  /** Beyond this a row hides its neighbours; the rest is seen in the cell itself. */
  private static final int MOST_LINES = 12;

  private TableRows() {}

  static <T> void write(Sheet sheet, List<Column<T>> columns, Iterable<T> rows, Pen pen) {
    int at = 1;
    for (T each : rows) {
      Row row = sheet.createRow(at);
      int lines = 1;
      for (int i = 0; i < columns.size(); i++) {
        Column<T> column = columns.get(i);
        Value value = column.value().apply(each);
        pen.write(row, i, column.format(), value);
        lines = Math.max(lines, column.format().isWrapped() ? lines(value, column.width()) : 1);
      }
      if (lines > 1) {
        row.setHeightInPoints(LINE_POINTS * lines);
      }
      at++;
    }
  }

  static int lines(Value value) {
    if (!(value instanceof Value.Text words)) {
      return 1;
    }
    int lines = words.text().lines().mapToInt(line -> 1 + line.length() / READ_ACROSS).sum();
    return Math.min(MOST_LINES, lines);
  }

  private static int lines(Value value, int width) {
    if (!(value instanceof Value.Text words)) {
      return 1;
    }
    int across = width - WrappedTable.SIDES;
    int lines = words.text().lines().mapToInt(line -> WrappedTable.lines(line, across)).sum();
    return Math.max(1, Math.min(MOST_LINES, lines));
  }
}
