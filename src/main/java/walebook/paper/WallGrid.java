package walebook.paper;

import java.util.List;

/**
 * A grid for the wall, to be filled with a pen.
 *
 * @param title of the lesson or class
 * @param rows one a student
 */
public record WallGrid(String title, List<Row> rows) {

  /** A student and their pieces in the order of sewing. */
  public record Row(String who, List<Cell> cells) {
    public Row {
      cells = List.copyOf(cells);
    }
  }

  /**
   * A piece to be written in.
   *
   * @param code as spoken
   * @param what its settings, short
   * @param cloth its name, where the cloths differ; else empty
   * @param control the piece that everybody sews
   */
  public record Cell(String code, String what, String cloth, boolean control) {}

  public WallGrid {
    rows = List.copyOf(rows);
  }

  int most() {
    return rows.stream().mapToInt(row -> row.cells().size()).max().orElse(0);
  }
}
