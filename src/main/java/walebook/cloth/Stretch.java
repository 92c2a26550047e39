package walebook.cloth;

import java.util.ArrayList;
import java.util.List;
import walebook.problem.Answer;
import walebook.problem.Problem;
import walebook.quantity.Measured;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Working;
import walebook.working.WorkingBuilder;

/** Stretch of a cloth along one grain: S = 100 (L1 − L0) ÷ L0. */
public final class Stretch {
  private Stretch() {}

  /**
   * Works out stretch in per cent of the gauge length.
   *
   * @param gaugeMm L0, between the marks before stretching, over 0
   * @param stretchedMm L1, between the same marks while stretched
   * @param readToMm d, what the lengths are read to; 0 when they count as exact
   * @return the working; no result when L1 is under L0, which is asked about
   */
  public static Answer<Working> of(double gaugeMm, double stretchedMm, double readToMm) {
    List<Problem> found = new ArrayList<>(ReadingCheck.of(gaugeMm, stretchedMm, null));
    found.addAll(ReadTo.check("read-to", readToMm));
    if (ReadingCheck.stops(found)) {
      return Answer.bad(found);
    }
    double percent = LengthChange.percent(gaugeMm, stretchedMm);
    double u = ReadingUncertainty.ofResolution(readToMm);
    double uPercent = ReadingUncertainty.ofChange(gaugeMm, stretchedMm, u, u);
    WorkingBuilder board =
        Working.named("stretch", Message.of("cloth.stretch.title"))
            .step(
                Message.of("cloth.stretch.step"),
                "S = 100 × (L1 − L0) ÷ L0",
                LengthChange.inNumbers(gaugeMm, stretchedMm));
    LengthChange.uncertaintySteps(board, "S", gaugeMm, stretchedMm, readToMm);
    return new Answer.Good<>(
        board
            .result(Measured.of(percent, Unit.PERCENT, uPercent))
            .assume(Message.of("cloth.assume.same-pull"))
            .assume(Message.of("cloth.assume.longer-gauge"))
            .source(Source.Kind.STANDARD, "ASTM D6614, 3.1: per cent of the length before loading")
            .source(Source.Kind.STANDARD, "JCGM 100 (GUM), 4.3.7 and 5.1.2")
            .says(
                Message.of(
                    "cloth.stretch.says", Show.percent(percent), Show.fixed(2 * uPercent, 1))),
        found);
  }
}
