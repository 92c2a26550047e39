package walebook.paper;

import java.io.IOException;
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
    List<PaperTable.Column> columns =
        PaperTable.filling(
            flow,
            List.of(
                PaperTable.Column.of(words.say("paper.plan.nth"), 9),
                PaperTable.Column.of(words.say("paper.plan.code"), 24),
                PaperTable.Column.of(words.say("paper.plan.cloth"), 52),
                PaperTable.Column.of(words.say("paper.plan.settings"), 82),
                PaperTable.Column.of(words.say("paper.plan.done"), 15)));
    int done = 0;
    for (PlanPaper.Part part : plan.students()) {
      flow.need(34);
      flow.text(part.who(), new Type(14, true));
      PaperTable table = new PaperTable(flow, words, columns, new Type(11, false), 7);
      table.head();
      int nth = 1;
      for (PlanPaper.Piece piece : part.pieces()) {
        table.row(
            List.of(
                PaperTable.Cell.of(Integer.toString(nth++)),
                PaperTable.Cell.strong(piece.code()),
                PaperTable.Cell.of(piece.cloth()),
                PaperTable.Cell.of(
                    piece.control()
                        ? words.say("paper.plan.control", piece.settings())
                        : piece.settings()),
                PaperTable.Cell.of(piece.done() ? words.say("paper.plan.logged") : "")));
      }
      flow.skip(5);
      progress.at((double) ++done / plan.students().size());
    }
    Flow.feet(sheets, plan.title(), words);
  }
}
