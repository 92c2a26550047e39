package walebook.drawing;

import java.util.List;
import walebook.words.Words;
import walebook.working.Message;

/**
 * How much of what was planned is done: people down, lessons across, the numbers in each cell and
 * the cell filled from below as high as the share that is done. Height, not shade, so that it reads
 * on any paper.
 *
 * @param rows names of the rows
 * @param columns names of the columns
 * @param cells row by row, each as long as {@code columns}
 */
public record DoneTable(List<String> rows, List<String> columns, List<List<Cell>> cells)
    implements Drawing {
  private static final double HEAD = 28;
  private static final double ROW = 34;
  private static final double GAP = 4;
  private static final double COLUMN = 72;
  private static final double LABELS = 110;

  /**
   * One cell.
   *
   * @param planned nought when nothing was planned
   */
  public record Cell(int done, int planned) {
    double share() {
      return planned == 0 ? 0 : Math.min(1, (double) done / planned);
    }
  }

  public DoneTable {
    rows = List.copyOf(rows);
    columns = List.copyOf(columns);
    cells = TableCells.full(cells, rows, columns);
  }

  @Override
  public double leastWidth() {
    return LABELS + COLUMN * Math.max(1, columns.size());
  }

  @Override
  public double ownWidth() {
    return leastWidth();
  }

  @Override
  public Picture at(double width, Words words) {
    double wide = takenWidth(width);
    double longest =
        rows.stream().mapToDouble(row -> TextWidth.of(row, Sketch.LABEL)).max().orElse(0);
    double labels = Math.min(longest + 12, wide * 0.34);
    double column = (wide - labels) / Math.max(1, columns.size());
    Sketch sketch = new Sketch();
    for (int c = 0; c < columns.size(); c++) {
      String name = TextWidth.fit(columns.get(c), Sketch.LABEL, column - 2 * GAP);
      sketch.text(labels + (c + 0.5) * column, 17, name, Shape.Anchor.MIDDLE, Role.SOFT);
    }
    for (int r = 0; r < rows.size(); r++) {
      double top = HEAD + r * ROW;
      String name = TextWidth.fit(rows.get(r), Sketch.LABEL, labels - 8);
      sketch.text(0, top + ROW / 2 + 3, name, Shape.Anchor.START, Role.INK);
      for (int c = 0; c < columns.size(); c++) {
        cell(sketch, cells.get(r).get(c), labels + c * column, top, column, words);
      }
    }
    return sketch.picture(wide, HEAD + ROW * rows.size(), says());
  }

  private static void cell(Sketch sketch, Cell cell, double x, double y, double wide, Words words) {
    double tall = ROW - GAP;
    double high = cell.share() * tall;
    if (high > 0) {
      sketch.rect(x + 2, y + tall - high, wide - GAP, high, Role.WASH, null);
    }
    boolean planned = cell.planned() > 0;
    Pen edge = planned ? Pen.solid(Role.LINE, 1) : Pen.dashed(Role.LINE, 1);
    sketch.rect(x + 2, y, wide - GAP, tall, null, edge);
    String says = planned ? words.say("drawing.done.cell", cell.done(), cell.planned()) : "–";
    sketch.text(
        x + wide / 2, y + tall / 2 + 5, says, Shape.Anchor.MIDDLE, planned ? Role.INK : Role.SOFT);
  }

  private Message says() {
    int done = cells.stream().flatMap(List::stream).mapToInt(Cell::done).sum();
    int planned = cells.stream().flatMap(List::stream).mapToInt(Cell::planned).sum();
    return Message.of(
        "drawing.done.says",
        Integer.toString(rows.size()),
        Integer.toString(columns.size()),
        Integer.toString(done),
        Integer.toString(planned));
  }
}
