package walebook.drawing;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;
import walebook.quantity.Show;
import walebook.words.Words;
import walebook.working.Message;

/**
 * Two factors against each other: a number in each cell with how many pieces it rests on, and the
 * cell filled from below as high as the number stands between the least and the most. Height, not
 * shade, so that it reads on any paper.
 *
 * @param title what the numbers are, with their unit
 * @param rows names of the rows
 * @param columns names of the columns
 * @param cells row by row, each as long as {@code columns}
 */
public record HeatTable(
    String title, List<String> rows, List<String> columns, List<List<Cell>> cells)
    implements Drawing {
  private static final double HEAD = 46;
  private static final double ROW = 44;
  private static final double GAP = 4;

  /** From one line of a name to its next. */
  private static final double LINE = 15;

  /**
   * One cell.
   *
   * @param value null when there is none to give
   * @param pieces nought when nothing was sewn there
   */
  public record Cell(@Nullable Double value, int pieces, Kind kind) {
    /** A cell with a number that is what it is, or without any. */
    public Cell(@Nullable Double value, int pieces) {
      this(value, pieces, Kind.EXACT);
    }

    /** The number as it stands in the cell. */
    public String shown(Words words) {
      if (value == null) {
        return "–";
      }
      String number = Show.fixed(value, 1);
      return switch (kind) {
        case EXACT -> number;
        case HALF -> words.say("drawing.heat.half", number);
        case AT_LEAST -> words.say("drawing.heat.at-least", number);
      };
    }
  }

  /** What a cell's number is. */
  public enum Kind {
    /** The value itself. */
    EXACT,
    /** Half of what was tried ended by there. */
    HALF,
    /** The true value may be anything above. */
    AT_LEAST
  }

  public HeatTable {
    rows = List.copyOf(rows);
    columns = List.copyOf(columns);
    cells = TableCells.full(cells, rows, columns);
  }

  @Override
  public double leastWidth() {
    return 110 + 64 * Math.max(1, columns.size());
  }

  @Override
  public double ownWidth() {
    return 150 + 110 * Math.max(1, columns.size());
  }

  @Override
  public Picture at(double width, Words words) {
    double wide = takenWidth(width);
    double longest = rows.stream().mapToDouble(HeatTable::wide).max().orElse(0);
    double labels = Math.min(longest + 10, wide * 0.34);
    double column = (wide - labels) / Math.max(1, columns.size());
    double[] values =
        cells.stream().flatMap(List::stream).flatMapToDouble(HeatTable::value).toArray();
    Reach reach = values.length == 0 ? null : Reach.of(values);
    Sketch sketch = new Sketch();
    sketch.bold(0, 15, TextWidth.fit(title, Sketch.LABEL, wide), Shape.Anchor.START, Role.INK);
    List<List<String>> names =
        columns.stream()
            .map(each -> TextWidth.inTwo(each, Sketch.LABEL, column - 2 * GAP))
            .toList();
    int lines = names.stream().mapToInt(List::size).max().orElse(1);
    double head = HEAD + (lines - 1) * LINE;
    for (int c = 0; c < columns.size(); c++) {
      List<String> name = names.get(c);
      double base = 38 + (lines - name.size()) * LINE;
      lines(sketch, name, labels + (c + 0.5) * column, base, Shape.Anchor.MIDDLE, Role.SOFT);
    }
    for (int r = 0; r < rows.size(); r++) {
      double top = head + r * ROW;
      List<String> name = TextWidth.inTwo(rows.get(r), Sketch.LABEL, labels - 8);
      double base = top + ROW / 2 + 4 - LINE / 2 * (name.size() - 1);
      lines(sketch, name, labels - 8, base, Shape.Anchor.END, Role.INK);
      for (int c = 0; c < columns.size(); c++) {
        cell(sketch, cells.get(r).get(c), reach, labels + c * column, top, column, words);
      }
    }
    double end = head + ROW * rows.size() + 4;
    long off = reach == null ? 0 : Arrays.stream(values).filter(each -> !reach.has(each)).count();
    if (off > 0) {
      end = OffScale.note(sketch, words.say("drawing.heat.off", off, values.length), end, wide) + 6;
    }
    return sketch.picture(wide, end, says());
  }

  private static void lines(
      Sketch sketch, List<String> lines, double x, double base, Shape.Anchor anchor, Role role) {
    double y = base;
    for (String each : lines) {
      sketch.text(x, y, each, anchor, role);
      y += LINE;
    }
  }

  private static void cell(
      Sketch sketch,
      Cell cell,
      @Nullable Reach reach,
      double x,
      double y,
      double wide,
      Words words) {
    Double value = cell.value();
    double tall = ROW - GAP;
    if (value != null && reach != null) {
      double range = reach.most() - reach.least();
      double share = range > 0 ? (value - reach.least()) / range : 0.5;
      double high = Math.max(2, Math.max(0, Math.min(1, share)) * tall);
      sketch.rect(x + 2, y + tall - high, wide - GAP, high, Role.WASH, null);
      if (!reach.has(value)) {
        double up = share > 1 ? -1 : 1;
        OffScale.arrow(sketch, x + wide - 12, y + tall / 2 - 5 * up, 0, up);
      }
    }
    Pen edge = cell.pieces() == 0 ? Pen.dashed(Role.LINE, 1) : Pen.solid(Role.LINE, 1);
    sketch.rect(x + 2, y, wide - GAP, tall, null, edge);
    double middle = x + wide / 2;
    if (cell.pieces() == 0) {
      sketch.text(middle, y + 24, "–", Shape.Anchor.MIDDLE, Role.SOFT);
      return;
    }
    sketch.bold(middle, y + 18, cell.shown(words), Shape.Anchor.MIDDLE, Role.INK);
    String n = words.say("drawing.heat.n", cell.pieces());
    sketch.text(middle, y + 34, n, Shape.Anchor.MIDDLE, Role.SOFT);
  }

  private static double wide(String text) {
    return TextWidth.of(text, Sketch.LABEL);
  }

  private static DoubleStream value(Cell cell) {
    Double value = cell.value();
    return value == null ? DoubleStream.empty() : DoubleStream.of(value);
  }

  private Message says() {
    int filled = (int) cells.stream().flatMap(List::stream).filter(c -> c.pieces() > 0).count();
    return Message.of(
        "drawing.heat.says",
        title,
        Integer.toString(rows.size()),
        Integer.toString(columns.size()),
        Integer.toString(filled));
  }
}
