package walebook.sheet;

import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * One sheet that is a table: what is in it and what is drawn beside it.
 *
 * @param name sentence key of the sheet's name, also used as its key in other formats
 * @param about sentence key of what the summary says of it
 * @param table the table's name, unique in the workbook
 * @param rows read again each time they are asked for
 * @param count how many rows there are
 * @param streamed true for the one table that may be long
 */
record SheetPart<T>(
    String name,
    String about,
    String table,
    List<Column<T>> columns,
    Iterable<T> rows,
    int count,
    boolean streamed,
    Beside<T> beside) {

  /** Draws what stands beside a filled table with at least one row. */
  @FunctionalInterface
  interface Beside<T> {
    void draw(XSSFSheet sheet, List<Column<T>> columns, int rows);
  }

  SheetPart {
    columns = List.copyOf(columns);
  }

  /** A short table with nothing beside it. */
  static <T> SheetPart<T> of(
      String name, String about, String table, List<Column<T>> columns, List<T> rows) {
    return new SheetPart<>(
        name, about, table, columns, rows, rows.size(), false, (sheet, all, count) -> {});
  }

  SheetPart<T> with(Beside<T> drawn) {
    return new SheetPart<>(name, about, table, columns, rows, count, streamed, drawn);
  }
}
