package walebook.sheet.in;

import java.util.List;
import walebook.problem.Problem;

/**
 * A sheet as read.
 *
 * @param sheet its name; a text file's own name
 * @param rows those that hold anything, first to last
 * @param remarks what was passed over or taken another way than it looks
 */
public record InGrid(String sheet, List<InRow> rows, List<Problem> remarks) {
  public InGrid {
    rows = List.copyOf(rows);
    remarks = List.copyOf(remarks);
  }

  /** How many columns are in use. */
  public int width() {
    return rows.stream().mapToInt(row -> row.cells().size()).max().orElse(0);
  }

  /** The letters of a column, from 0. */
  public static String letters(int column) {
    StringBuilder letters = new StringBuilder();
    for (int rest = column; rest >= 0; rest = rest / 26 - 1) {
      letters.insert(0, (char) ('A' + rest % 26));
    }
    return letters.toString();
  }
}
