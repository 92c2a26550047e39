package walebook.paper;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import walebook.words.Words;

/** The mark sheet on pages laid across, with lines to sign at the end. */
final class MarkPages {
  /** So many criteria stand beside each other and can still be read; more are shared out evenly. */
  private static final int ACROSS = 8;

  private static final double MOST_MM = 150;
  private static final double HEAD_MM = 24;
  private static final double ROW_MM = 11;
  private static final double SIGN_MM = 14;
  private static final Type CELL = new Type(9, false);

  private final Flow flow;
  private final MarkPaper paper;
  private final Words words;

  private MarkPages(Flow flow, MarkPaper paper, Words words) {
    this.flow = flow;
    this.paper = paper;
    this.words = words;
  }

  static void draw(Sheets sheets, MarkPaper paper, Words words, PaperProgress progress)
      throws IOException {
    MarkPages pages = new MarkPages(new Flow(sheets), paper, words);
    pages.top();
    int done = 0;
    for (MarkPaper.Part part : paper.students()) {
      pages.student(part);
      progress.at((double) ++done / (paper.students().size() + 1));
    }
    pages.coverage();
    pages.signatures();
    Flow.feet(sheets, paper.title(), words);
  }

  private void top() throws IOException {
    flow.text(paper.title(), Type.TITLE);
    for (String line : paper.lines()) {
      flow.text(line, Type.BODY);
    }
    flow.skip(1.5);
    flow.text(words.say("paper.marks.how"), Type.BODY);
    flow.skip(2);
    if (paper.students().isEmpty()) {
      flow.text(words.say("paper.marks.none"), Type.BODY);
    }
  }

  private void student(MarkPaper.Part part) throws IOException {
    // Kept on one page where one is enough: a page that goes astray still says whose it is.
    flow.need(Math.min(MOST_MM, HEAD_MM + ROW_MM * part.pieces().size()));
    flow.text(part.who(), Type.HEADING);
    if (part.pieces().isEmpty()) {
      flow.text(words.say("paper.marks.no-pieces"), Type.BODY);
    } else {
      pieces(part.pieces());
    }
    if (!part.others().isEmpty()) {
      flow.skip(1);
      String codes = String.join(", ", part.others());
      flow.text(words.say("paper.marks.others", part.others().size(), codes), Type.BODY);
    }
    flow.skip(4);
  }

  private void pieces(List<MarkPaper.Row> pieces) throws IOException {
    List<PaperTable.Column> columns = new ArrayList<>();
    columns.add(PaperTable.Column.of(words.say("paper.marks.piece"), 22));
    columns.add(PaperTable.Column.of(words.say("paper.marks.sewn-on"), 25));
    columns.add(PaperTable.Column.of(words.say("paper.marks.lesson"), 46));
    columns.add(PaperTable.Column.of(words.say("paper.marks.criteria"), 24));
    for (String each : paper.markings()) {
      columns.add(PaperTable.Column.of(each, 27));
    }
    columns.add(PaperTable.Column.of(words.say("paper.marks.help"), 25));
    columns.add(PaperTable.Column.of(words.say("paper.marks.result"), 26));
    PaperTable table = new PaperTable(flow, words, PaperTable.filling(flow, columns), CELL, 5);
    table.head();
    for (MarkPaper.Row row : pieces) {
      List<PaperTable.Cell> cells = new ArrayList<>();
      cells.add(PaperTable.Cell.strong(row.code()));
      cells.add(PaperTable.Cell.of(row.sewnOn()));
      cells.add(PaperTable.Cell.of(row.lesson()));
      cells.add(PaperTable.Cell.of(row.criteria()));
      row.marks().forEach(mark -> cells.add(PaperTable.Cell.of(mark)));
      cells.add(PaperTable.Cell.of(row.help()));
      cells.add(PaperTable.Cell.of(row.result()));
      table.row(cells);
    }
  }

  private void coverage() throws IOException {
    if (paper.criteria().isEmpty()) {
      return;
    }
    flow.heading(words.say("paper.marks.coverage"), Type.HEADING);
    flow.text(words.say("paper.marks.coverage-how"), Type.BODY);
    flow.skip(1.5);
    int all = paper.criteria().size();
    int groups = (all + ACROSS - 1) / ACROSS;
    for (int i = 0; i < groups; i++) {
      coverage(all * i / groups, all * (i + 1) / groups);
    }
    flow.heading(words.say("paper.marks.asks"), Type.HEADING);
    for (MarkPaper.Asked each : paper.criteria()) {
      flow.item(each.code(), each.says(), Type.BODY);
    }
    flow.skip(3);
  }

  private void coverage(int from, int to) throws IOException {
    List<PaperTable.Column> columns = new ArrayList<>();
    columns.add(PaperTable.Column.of(words.say("paper.marks.student"), 45));
    for (MarkPaper.Asked each : paper.criteria().subList(from, to)) {
      columns.add(PaperTable.Column.of(each.code(), 27));
    }
    PaperTable table = new PaperTable(flow, words, PaperTable.filling(flow, columns), CELL, 5);
    table.head();
    for (MarkPaper.Covered row : paper.coverage()) {
      List<PaperTable.Cell> cells = new ArrayList<>();
      cells.add(PaperTable.Cell.strong(row.who()));
      row.cells().subList(from, to).forEach(each -> cells.add(PaperTable.Cell.of(each)));
      table.row(cells);
    }
    flow.skip(4);
  }

  /** The count and the lines stay together: a signature alone on a page signs nothing. */
  private void signatures() throws IOException {
    flow.need(2 * SIGN_MM + 14);
    flow.skip(2);
    flow.text(paper.tally(), Type.BODY);
    List<String> who = List.of(words.say("paper.marks.tutor"), words.say("paper.marks.assessor"));
    double dateAt = flow.left() + flow.width() * 0.62;
    for (String each : who) {
      flow.skip(SIGN_MM);
      double y = flow.y();
      sign(each, flow.left(), dateAt - 6, y);
      sign(words.say("paper.marks.date"), dateAt, flow.left() + flow.width(), y);
    }
    flow.skip(4);
  }

  private void sign(String label, double from, double to, double y) throws IOException {
    Ink ink = flow.ink();
    ink.text(from, y, label, Type.BODY);
    ink.line(from + ink.width(label, Type.BODY) + 2, y, to, y, Ink.THIN);
  }
}
