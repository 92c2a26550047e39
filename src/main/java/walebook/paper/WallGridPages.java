package walebook.paper;

import java.io.IOException;
import java.util.List;
import walebook.words.Words;

/** Students down, pieces across, a box for each to write in; more pieces go on further pages. */
final class WallGridPages {
  private static final double NAME = 44;
  private static final double LEAST_CELL = 18;
  private static final double MOST_CELL = 60;
  private static final double LEAST_ROW = 12.5;
  private static final double CLOTH_ROW = 3;
  private static final double MOST_ROW = 20;

  private final Sheets sheets;
  private final WallGrid grid;
  private final Words words;
  private final int across;
  private final double cell;
  private Ink ink;
  private double y;

  private WallGridPages(Sheets sheets, WallGrid grid, Words words) throws IOException {
    this.sheets = sheets;
    this.grid = grid;
    this.words = words;
    double room = sheets.widthMm() - 2 * Flow.MARGIN - NAME;
    int fit = (int) (room / LEAST_CELL);
    int most = Math.max(1, grid.most());
    int pages = (most + fit - 1) / fit;
    across = (most + pages - 1) / pages;
    cell = Math.min(MOST_CELL, room / across);
    ink = sheets.page();
  }

  static void draw(Sheets sheets, WallGrid grid, Words words, PaperProgress progress)
      throws IOException {
    WallGridPages pages = new WallGridPages(sheets, grid, words);
    int most = Math.max(1, grid.most());
    for (int from = 0; from < most; from += pages.across) {
      pages.part(from, from > 0);
      progress.at(Math.min(1, (double) (from + pages.across) / most));
    }
    Flow.feet(sheets, words.say("paper.grid.how"), words);
  }

  private void part(int from, boolean fresh) throws IOException {
    if (fresh) {
      ink = sheets.page();
    }
    head(from);
    if (grid.rows().isEmpty()) {
      ink.text(Flow.MARGIN, y + 8, words.say("paper.no-pieces"), Type.BODY);
      return;
    }
    double bottom = sheets.heightMm() - Flow.MARGIN - 4;
    double high = Math.max(least(), Math.min(MOST_ROW, (bottom - y) / grid.rows().size()));
    for (WallGrid.Row row : grid.rows()) {
      if (y + high > bottom + 0.01) {
        ink = sheets.page();
        head(from);
      }
      row(row, from, high);
    }
  }

  /** A line for the cloth takes nothing from the room for the pen. */
  private double least() {
    boolean cloths =
        grid.rows().stream()
            .flatMap(row -> row.cells().stream())
            .anyMatch(each -> !each.cloth().isEmpty());
    return cloths ? LEAST_ROW + CLOTH_ROW : LEAST_ROW;
  }

  private void head(int from) throws IOException {
    Type title = new Type(15, true);
    double wide = sheets.widthMm() - 2 * Flow.MARGIN;
    ink.text(
        Flow.MARGIN,
        Flow.MARGIN + title.ascentMm(),
        Wrap.cut(ink, grid.title(), title, wide),
        title);
    y = Flow.MARGIN + title.leadingMm() + 1;
    ink.line(Flow.MARGIN, y, Flow.MARGIN + NAME + across * cell, y, Ink.THICK);
    Type type = Type.STRONG;
    ink.text(Flow.MARGIN + 1, y + type.ascentMm() + 0.6, words.say("paper.grid.student"), type);
    for (int i = 0; i < across; i++) {
      double left = Flow.MARGIN + NAME + i * cell;
      String number = words.say("paper.grid.nth", from + i + 1);
      ink.middle(left + cell / 2, y + type.ascentMm() + 0.6, number, type);
    }
    y += type.leadingMm() + 1;
    ink.line(Flow.MARGIN, y, Flow.MARGIN + NAME + across * cell, y, Ink.THICK);
  }

  private void row(WallGrid.Row row, int from, double high) throws IOException {
    double x = Flow.MARGIN;
    ink.line(x, y, x, y + high, Ink.THIN);
    Type type = Type.STRONG;
    double base = y + 0.6 + type.ascentMm();
    for (String line : Wrap.lines(ink, row.who(), type, NAME - 2, 2)) {
      ink.text(x + 1, base, line, type);
      base += type.leadingMm();
    }
    x += NAME;
    for (int i = from; i < from + across; i++) {
      ink.line(x, y, x, y + high, Ink.THIN);
      if (i < row.cells().size()) {
        cell(row.cells().get(i), x, high);
      }
      x += cell;
    }
    ink.line(x, y, x, y + high, Ink.THIN);
    y += high;
    ink.line(Flow.MARGIN, y, x, y, Ink.THIN);
  }

  /** The code and what is sewn at the top; below is for the pen. */
  private void cell(WallGrid.Cell piece, double x, double high) throws IOException {
    Type type = Type.SMALL;
    String code = piece.control() ? words.say("paper.grid.control", piece.code()) : piece.code();
    ink.text(x + 0.8, y + type.ascentMm() + 0.2, Wrap.cut(ink, code, type, cell - 1.4), type);
    List<String> lines = Wrap.lines(ink, piece.what(), type, cell - 1.4, high > 16 ? 2 : 1);
    double base = y + type.ascentMm() + type.leadingMm() * 0.95;
    for (String line : lines) {
      ink.text(x + 0.8, base, line, type);
      base += type.leadingMm() * 0.95;
    }
    if (!piece.cloth().isEmpty()) {
      ink.text(x + 0.8, base, Wrap.cut(ink, piece.cloth(), type, cell - 1.4), type);
    }
  }
}
