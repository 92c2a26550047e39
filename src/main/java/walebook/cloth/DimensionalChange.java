package walebook.cloth;

import java.util.ArrayList;
import java.util.List;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Measured;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Working;
import walebook.working.WorkingBuilder;

/** What washing does to a length: D = 100 (after − before) ÷ before; minus is shrinkage. */
public final class DimensionalChange {
  /** ISO 3759 marks at least 350 mm apart. */
  private static final double SHORT_MARKS_MM = 350;

  private DimensionalChange() {}

  /**
   * Works out dimensional change along one grain.
   *
   * @param beforeMm between the marks before washing, over 0
   * @param afterMm after washing and drying, over 0
   * @param readToMm what the lengths are read to
   */
  public static Answer<Working> of(double beforeMm, double afterMm, double readToMm) {
    List<Problem> found = new ArrayList<>();
    length(found, "before", beforeMm);
    length(found, "after", afterMm);
    found.addAll(ReadTo.check("read-to", readToMm));
    if (!found.isEmpty()) {
      return Answer.bad(found);
    }
    double percent = LengthChange.percent(beforeMm, afterMm);
    double u = ReadingUncertainty.ofResolution(readToMm);
    double uPercent = ReadingUncertainty.ofChange(beforeMm, afterMm, u, u);
    WorkingBuilder board =
        Working.named("wash-change", Message.of("cloth.wash.title"))
            .step(
                Message.of("cloth.wash.step"),
                "D = 100 × (after − before) ÷ before",
                LengthChange.inNumbers(beforeMm, afterMm));
    LengthChange.uncertaintySteps(board, "D", beforeMm, afterMm, readToMm);
    if (beforeMm < SHORT_MARKS_MM) {
      board.assume(Message.of("cloth.assume.short-marks"));
    }
    return Answer.good(
        board
            .result(Measured.of(percent, Unit.PERCENT, uPercent))
            .assume(Message.of("cloth.assume.one-grain"))
            .source(Source.Kind.STANDARD, "ISO 5077 (formula and sign); ISO 3759 (marks)")
            .says(
                Message.of(
                    sentence(percent),
                    Show.percent(Math.abs(percent)),
                    Show.fixed(2 * uPercent, 1))));
  }

  /** Both grains together: the change of area in per cent, which is not the sum of the two. */
  public static double ofArea(double lengthPercent, double widthPercent) {
    return 100 * ((1 + lengthPercent / 100) * (1 + widthPercent / 100) - 1);
  }

  private static String sentence(double percent) {
    if (percent == 0) {
      return "cloth.wash.says-same";
    }
    return percent < 0 ? "cloth.wash.says-shrunk" : "cloth.wash.says-grown";
  }

  private static void length(List<Problem> found, String field, double mm) {
    if (!(Double.isFinite(mm) && mm > 0)) {
      found.add(Problem.refuse("reading.not-positive", Place.field(field), Show.mm(mm), "350 mm"));
    }
  }
}
