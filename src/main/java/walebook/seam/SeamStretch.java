package walebook.seam;

import java.util.ArrayList;
import java.util.List;
import walebook.cloth.LengthChange;
import walebook.cloth.ReadTo;
import walebook.cloth.ReadingCheck;
import walebook.cloth.ReadingUncertainty;
import walebook.problem.Answer;
import walebook.problem.Problem;
import walebook.quantity.Measured;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Working;
import walebook.working.WorkingBuilder;

/** The measured stretch of a seam: a value where it gave, a lower bound where it held. */
public final class SeamStretch {
  private SeamStretch() {}

  /**
   * Works out how far the seam stretched.
   *
   * @param gaugeMm L0, between the marks before stretching, over 0
   * @param lengthMm the length at which it gave, or to which it held
   * @param end which of the two
   * @param readToMm what the lengths are read to
   * @return the working; without a value when it held, since a lower bound is not a value
   */
  public static Answer<Working> of(double gaugeMm, double lengthMm, SeamEnd end, double readToMm) {
    List<Problem> found = new ArrayList<>(ReadingCheck.of(gaugeMm, lengthMm, null));
    found.addAll(ReadTo.check("read-to", readToMm));
    boolean stops = found.stream().anyMatch(Problem::refuses) || lengthMm < gaugeMm;
    if (stops) {
      return Answer.bad(found);
    }
    double percent = LengthChange.percent(gaugeMm, lengthMm);
    double u = ReadingUncertainty.ofResolution(readToMm);
    double uPercent = ReadingUncertainty.ofChange(gaugeMm, lengthMm, u, u);
    WorkingBuilder board =
        Working.named("seam-stretch", Message.of("seam.stretch.title"))
            .step(
                Message.of(
                    end == SeamEnd.GAVE ? "seam.stretch.step-gave" : "seam.stretch.step-held"),
                end == SeamEnd.GAVE ? "S = 100 × (L − L0) ÷ L0" : "S ≥ 100 × (L − L0) ÷ L0",
                LengthChange.inNumbers(gaugeMm, lengthMm));
    LengthChange.uncertaintySteps(board, "S", gaugeMm, lengthMm, readToMm);
    board
        .assume(Message.of("seam.assume.first-crack"))
        .source(Source.Kind.STANDARD, "ASTM D6614, 3.1: per cent of the length before loading")
        .source(Source.Kind.STANDARD, "JCGM 100 (GUM), 4.3.7 and 5.1.2");
    if (end == SeamEnd.GAVE) {
      board.result(Measured.of(percent, Unit.PERCENT, uPercent));
    } else {
      board.assume(Message.of("seam.assume.held-is-bound"));
    }
    String key = end == SeamEnd.GAVE ? "seam.stretch.says-gave" : "seam.stretch.says-held";
    return new Answer.Good<>(
        board.says(Message.of(key, Show.percent(percent), Show.fixed(2 * uPercent, 1))), found);
  }
}
