package walebook.paper;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import walebook.words.Words;

/** The plan for the wall, by student, large enough to be read standing. */
final class PlanPages {
  private PlanPages() {}

  static void draw(Sheets sheets, PlanPaper plan, Words words, PaperProgress progress)
      throws IOException {
    Flow flow = new Flow(sheets);
    flow.text(plan.title(), Type.TITLE);
    flow.text(plan.when(), Type.BODY);
    if (!plan.question().isEmpty()) {
      flow.text(plan.question(), Type.HEADING);
    }
    flow.skip(2);
    if (plan.students().isEmpty()) {
      flow.text(words.say("paper.no-pieces"), Type.BODY);
    }
    boolean codes = plan.hasCodes();
    List<PaperTable.Column> columns = PaperTable.filling(flow, columns(words, codes));
    int done = 0;
    for (PlanPaper.Part part : plan.students()) {
      flow.need(34);
      flow.text(part.who(), new Type(14, true));
      PaperTable table = new PaperTable(flow, words, columns, new Type(11, false), 7);
      table.head();
      int nth = 1;
      for (PlanPaper.Piece piece : part.pieces()) {
        table.row(row(piece, nth++, codes, words));
      }
      flow.skip(5);
      progress.at((double) ++done / plan.students().size());
    }
    Flow.feet(sheets, plan.title(), words);
  }

  private static List<PaperTable.Column> columns(Words words, boolean codes) {
    List<PaperTable.Column> columns = new ArrayList<>();
    columns.add(PaperTable.Column.of(words.say("paper.plan.nth"), 9));
    if (codes) {
      columns.add(PaperTable.Column.of(words.say("paper.plan.code"), 24));
    }
    columns.add(PaperTable.Column.of(words.say("paper.plan.cloth"), 52));
    String what = words.say(codes ? "paper.plan.settings" : "paper.plan.which-way");
    columns.add(PaperTable.Column.of(what, codes ? 82 : 96));
    columns.add(PaperTable.Column.of(words.say("paper.plan.done"), codes ? 15 : 25));
    return columns;
  }

  private static List<PaperTable.Cell> row(
      PlanPaper.Piece piece, int nth, boolean codes, Words words) {
    List<PaperTable.Cell> cells = new ArrayList<>();
    cells.add(PaperTable.Cell.of(Integer.toString(nth)));
    if (codes) {
      cells.add(PaperTable.Cell.strong(piece.code()));
    }
    cells.add(PaperTable.Cell.of(piece.cloth()));
    cells.add(
        PaperTable.Cell.of(
            piece.control()
                ? words.say("paper.plan.control", piece.settings())
                : piece.settings()));
    cells.add(PaperTable.Cell.of(piece.done()));
    return cells;
  }
}
