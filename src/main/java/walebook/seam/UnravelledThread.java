package walebook.seam;

import walebook.problem.Answer;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Working;
import walebook.working.WorkingBuilder;

/** Thread for a seam from the thread drawn out of a test piece, which beats model and table. */
public final class UnravelledThread {
  private UnravelledThread() {}

  /**
   * Works out thread for a seam.
   *
   * @param pieceMm seam unravelled, over 0
   * @param needleMm needle thread drawn out of it, over 0
   * @param underMm bobbin or looper thread drawn out of it, not negative
   * @param seamMm seam to be sewn, over 0
   * @param wastePercent for ends and threading, not negative
   */
  public static Answer<Working> of(
      double pieceMm, double needleMm, double underMm, double seamMm, double wastePercent) {
    Needs needs =
        new Needs()
            .positive("piece", pieceMm, "150 mm")
            .positive("needle-thread", needleMm, "195 mm")
            .notNegative("under-thread", underMm, "200 mm")
            .positive("seam", seamMm, "1000 mm")
            .notNegative("waste", wastePercent, "15 %");
    if (needs.failed()) {
      return Answer.bad(needs.problems());
    }
    double ratio = (needleMm + underMm) / pieceMm;
    double metres = ThreadUse.lengthMm(ratio, seamMm, wastePercent) / Unit.METRE.inBase();
    WorkingBuilder board =
        Working.named("thread-unravelled", Message.of("seam.unravelled.title"))
            .step(
                Message.of("seam.unravelled.step-needle"),
                "needle thread ÷ seam",
                quotient(needleMm, pieceMm))
            .step(
                Message.of("seam.unravelled.step-under"),
                "bobbin or looper thread ÷ seam",
                quotient(underMm, pieceMm));
    return Answer.good(
        ThreadUse.total(board, ratio, seamMm, wastePercent)
            .assume(Message.of("seam.assume.waste"))
            .source(Source.Kind.MEASURED_HERE, "thread drawn out of the class's own test piece")
            .says(Message.of("seam.unravelled.says", Show.fixed(metres, 1), Show.fixed(ratio, 2))));
  }

  private static String quotient(double thread, double seam) {
    return "%s ÷ %s = %s"
        .formatted(Show.upTo(thread, 1), Show.upTo(seam, 1), Show.fixed(thread / seam, 2));
  }
}
