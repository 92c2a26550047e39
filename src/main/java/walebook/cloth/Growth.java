package walebook.cloth;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.problem.Answer;
import walebook.problem.Problem;
import walebook.quantity.Measured;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Working;
import walebook.working.WorkingBuilder;

/** Growth of a cloth: what stays behind after release and rest, G = 100 (L2 − L0) ÷ L0. */
public final class Growth {
  private Growth() {}

  /**
   * Works out growth in per cent of the gauge length.
   *
   * @param gaugeMm L0, over 0
   * @param stretchedMm L1, to check the reading by; null when not read
   * @param releasedMm L2, after release and rest
   * @param readToMm d, what the lengths are read to
   * @return the working; no result when L2 is over L1, which is asked about
   */
  public static Answer<Working> of(
      double gaugeMm, @Nullable Double stretchedMm, double releasedMm, double readToMm) {
    List<Problem> found = new ArrayList<>(ReadingCheck.of(gaugeMm, stretchedMm, releasedMm));
    found.addAll(ReadTo.check("read-to", readToMm));
    if (ReadingCheck.stops(found)) {
      return Answer.bad(found);
    }
    double percent = LengthChange.percent(gaugeMm, releasedMm);
    double u = ReadingUncertainty.ofResolution(readToMm);
    double uPercent = ReadingUncertainty.ofChange(gaugeMm, releasedMm, u, u);
    WorkingBuilder board =
        Working.named("growth", Message.of("cloth.growth.title"))
            .step(
                Message.of("cloth.growth.step"),
                "G = 100 × (L2 − L0) ÷ L0",
                LengthChange.inNumbers(gaugeMm, releasedMm));
    LengthChange.uncertaintySteps(board, "G", gaugeMm, releasedMm, readToMm);
    String key = percent < 0 ? "cloth.growth.says-shorter" : "cloth.growth.says";
    return new Answer.Good<>(
        board
            .result(Measured.of(percent, Unit.PERCENT, uPercent))
            .assume(Message.of("cloth.assume.rest-time"))
            .source(Source.Kind.STANDARD, "ASTM D6614, 3.1: per cent of the length before loading")
            .source(Source.Kind.STANDARD, "JCGM 100 (GUM), 4.3.7 and 5.1.2")
            .says(Message.of(key, Show.percent(percent), Show.fixed(2 * uPercent, 1))),
        found);
  }
}
