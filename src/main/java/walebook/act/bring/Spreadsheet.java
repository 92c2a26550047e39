package walebook.act.bring;

import java.util.ArrayList;
import java.util.List;
import walebook.problem.Problem;
import walebook.sheet.in.InCell;
import walebook.sheet.in.InGrid;
import walebook.sheet.in.InRow;

/** One sheet in hand: its headers, and its rows below them. */
public final class Spreadsheet {
  private final InGrid grid;
  private final List<String> headers;
  private final List<InRow> rows;

  /**
   * A sheet.
   *
   * @param header place of the header among the grid's rows; -1 where there is none
   */
  Spreadsheet(InGrid grid, int header) {
    this.grid = grid;
    List<String> titles = new ArrayList<>();
    for (int i = 0; i < grid.width(); i++) {
      titles.add(header < 0 ? "" : grid.rows().get(header).at(i).text().strip());
    }
    this.headers = List.copyOf(titles);
    this.rows = grid.rows().subList(header + 1, grid.rows().size());
  }

  public String name() {
    return grid.sheet();
  }

  /** What stands above each column; empty where nothing does. */
  public List<String> headers() {
    return headers;
  }

  /** What was passed over or taken another way than it looks. */
  public List<Problem> remarks() {
    return grid.remarks();
  }

  /** How many rows there are below the headers. */
  public int size() {
    return rows.size();
  }

  /** The letters over a column, from 0. */
  public static String letters(int column) {
    return InGrid.letters(column);
  }

  /** The first values of a column that are not empty. */
  public List<String> samples(int column, int most) {
    List<String> samples = new ArrayList<>();
    for (int i = 0; i < rows.size() && samples.size() < most; i++) {
      InCell cell = rows.get(i).at(column);
      if (!cell.isEmpty()) {
        samples.add(cell.text().strip());
      }
    }
    return samples;
  }

  List<InRow> rows() {
    return rows;
  }
}
