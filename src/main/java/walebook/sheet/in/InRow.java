package walebook.sheet.in;

import java.util.List;

/**
 * One row that holds anything.
 *
 * @param number from 1, as a spreadsheet program shows it
 * @param cells from column A; those after the last filled one are left out
 */
public record InRow(int number, List<InCell> cells) {
  public InRow {
    cells = List.copyOf(cells);
  }

  /** The cell of a column, from 0. */
  public InCell at(int column) {
    return column >= 0 && column < cells.size() ? cells.get(column) : InCell.EMPTY;
  }
}
