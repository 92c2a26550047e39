package walebook.seam;

import walebook.problem.Answer;
import walebook.quantity.Measured;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Working;

/** How wide a zigzag must be for a seam to extend so far: w = k l √((1 + e)² − 1). */
public final class RequiredWidth {
  private RequiredWidth() {}

  /**
   * Works out the width.
   *
   * @param targetPercent how far the seam is to extend, by geometry alone
   * @param lengthMm seam per needle drop, over 0
   * @param steps needle drops per swing
   */
  public static Answer<Working> of(double targetPercent, double lengthMm, int steps) {
    Needs needs =
        new Needs()
            .notNegative("target", targetPercent, "50 %")
            .positive("length", lengthMm, "2.5 mm")
            .between("steps", steps, 1, 9);
    if (needs.failed()) {
      return Answer.bad(needs.problems());
    }
    double width = Zigzag.widthFor(targetPercent, lengthMm, steps);
    return Answer.good(
        Working.named("zigzag-width", Message.of("seam.width.title"))
            .step(
                Message.of("seam.width.step"),
                "w = k × l × √((1 + e)² − 1)",
                "%s × %s × √((1 + %s)² − 1) = %s"
                    .formatted(
                        steps,
                        Show.upTo(lengthMm, 2),
                        Show.upTo(targetPercent / 100, 4),
                        Show.mm(width)))
            .result(Measured.of(width, Unit.MM))
            .assume(Message.of("seam.assume.model"))
            .assume(Message.of("seam.assume.sewn-stitch"))
            .source(Source.Kind.DEFINITION, "the zigzag's geometry turned round")
            .says(
                Message.of(
                    "seam.width.says",
                    Show.mm(width),
                    Show.percent(targetPercent),
                    Show.mm(lengthMm))));
  }
}
