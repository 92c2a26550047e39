package walebook.drawing;

import java.util.List;

/** The cells of a table with names down its side and across its head. */
final class TableCells {
  private TableCells() {}

  /**
   * A copy of cells that fill their table.
   *
   * @param cells row by row
   * @throws IllegalArgumentException when a row or a cell is missing or too many
   */
  static <T> List<List<T>> full(List<List<T>> cells, List<String> rows, List<String> columns) {
    int wide = columns.size();
    if (cells.size() != rows.size() || cells.stream().anyMatch(row -> row.size() != wide)) {
      throw new IllegalArgumentException("cells must fill every row and column");
    }
    return cells.stream().map(List::copyOf).toList();
  }
}
