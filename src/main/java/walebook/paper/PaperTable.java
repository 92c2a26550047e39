package walebook.paper;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.words.Words;
import walebook.working.Verdict;

/** A ruled table whose head stands again on every page; rows are never parted. */
final class PaperTable {
  private static final double PAD = 1.2;

  private final Flow flow;
  private final Words words;
  private final List<Column> columns;
  private final Type type;
  private final double leastRowMm;
  private double top;

  /** A column and its share of the width. */
  record Column(String head, double widthMm, boolean right) {
    static Column of(String head, double widthMm) {
      return new Column(head, widthMm, false);
    }
  }

  /**
   * A cell.
   *
   * @param verdict drawn as its mark before the text; null for none
   * @param box whether a box to tick is drawn in it
   */
  record Cell(String text, boolean bold, @Nullable Verdict verdict, boolean box) {
    static Cell of(String text) {
      return new Cell(text, false, null, false);
    }

    static Cell strong(String text) {
      return new Cell(text, true, null, false);
    }

    static Cell marked(String text, Verdict verdict) {
      return new Cell(text, false, verdict, false);
    }

    static Cell toTick() {
      return new Cell("", false, null, true);
    }
  }

  /**
   * A table in a column of a page.
   *
   * @param leastRowMm height of a row, to be written in
   */
  PaperTable(Flow flow, Words words, List<Column> columns, Type type, double leastRowMm) {
    this.flow = flow;
    this.words = words;
    this.columns = List.copyOf(columns);
    this.type = type;
    this.leastRowMm = leastRowMm;
  }

  /** Widths in proportion, so that together they fill the flow. */
  static List<Column> filling(Flow flow, List<Column> columns) {
    double all = columns.stream().mapToDouble(Column::widthMm).sum();
    return columns.stream()
        .map(each -> new Column(each.head(), each.widthMm() * flow.width() / all, each.right()))
        .toList();
  }

  /** The head; call it once before the rows. */
  void head() throws IOException {
    flow.need(3 * leastRowMm + 6);
    drawHead();
  }

  private void drawHead() throws IOException {
    List<Cell> heads = columns.stream().map(each -> Cell.strong(each.head())).toList();
    top = flow.y();
    flow.ink().line(flow.left(), top, flow.left() + flow.width(), top, Ink.THICK);
    draw(heads, Ink.THICK, 0);
  }

  void row(List<Cell> cells) throws IOException {
    if (flow.need(height(cells, leastRowMm))) {
      drawHead();
    }
    draw(cells, Ink.THIN, leastRowMm);
  }

  private double height(List<Cell> cells, double least) throws IOException {
    int most = 1;
    for (int i = 0; i < cells.size(); i++) {
      most = Math.max(most, lines(cells.get(i), columns.get(i)).size());
    }
    return Math.max(least, most * type.leadingMm() + 2 * PAD * 0.7);
  }

  private double mark() {
    return Ink.mm(type.points() * 1.05);
  }

  private List<String> lines(Cell cell, Column column) throws IOException {
    double room = column.widthMm() - 2 * PAD - (cell.verdict() == null ? 0 : mark() + 1);
    return Wrap.lines(flow.ink(), cell.text(), typeOf(cell), room);
  }

  private Type typeOf(Cell cell) {
    return new Type(type.points(), cell.bold());
  }

  private void draw(List<Cell> cells, double below, double least) throws IOException {
    double high = height(cells, least);
    double y = flow.y();
    double x = flow.left();
    Ink ink = flow.ink();
    for (int i = 0; i < cells.size(); i++) {
      draw(ink, cells.get(i), columns.get(i), x, y);
      ink.line(x, y, x, y + high, Ink.THIN);
      x += columns.get(i).widthMm();
    }
    ink.line(x, y, x, y + high, Ink.THIN);
    ink.line(flow.left(), y + high, x, y + high, below);
    flow.skip(high);
  }

  private void draw(Ink ink, Cell cell, Column column, double x, double y) throws IOException {
    double left = x + PAD;
    Verdict verdict = cell.verdict();
    if (verdict != null) {
      Flow.mark(ink, verdict, words, left, y + PAD * 0.7, mark());
      left += mark() + 1;
    }
    if (cell.box()) {
      ink.frame(left, y + PAD * 0.7 + 0.3, mark(), mark(), Ink.THIN);
    }
    double base = y + PAD * 0.7 + type.ascentMm();
    List<String> lines = new ArrayList<>(lines(cell, column));
    for (String line : lines) {
      if (column.right()) {
        ink.end(x + column.widthMm() - PAD, base, line, typeOf(cell));
      } else {
        ink.text(left, base, line, typeOf(cell));
      }
      base += type.leadingMm();
    }
  }
}
