package walebook.garment;

import walebook.problem.Answer;
import walebook.quantity.Measured;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Working;
import walebook.working.WorkingBuilder;

/**
 * A pattern's allowance on an overlocker, whose own allowance runs from its knife to its left
 * needle: two right ways to keep the size, and the wrong one in numbers.
 */
public final class Overlocker {
  private Overlocker() {}

  /**
   * Works out the three ways.
   *
   * @param patternMm a, the pattern's allowance, not negative
   * @param knifeMm k, from the left needle to the knife, from the machine's card, over 0
   * @param seams n, how many seams cross the girth, 1 to 24
   * @param capDegrees the turn of a sleeve's cap, 0 to 360
   * @param armholeDegrees the turn of the armhole, 0 to 360
   * @return the working; its result is what the girth gains the wrong way, in mm
   */
  public static Answer<Working> of(
      double patternMm, double knifeMm, int seams, double capDegrees, double armholeDegrees) {
    return new GarmentNeeds()
        .notNegative("allowance", patternMm, "15 mm")
        .positive("knife", knifeMm, "6.5 mm")
        .between("seams", seams, 1, 24)
        .between("cap-turn", capDegrees, 0, 360)
        .between("armhole-turn", armholeDegrees, 0, 360)
        .then(() -> work(patternMm, knifeMm, seams, capDegrees, armholeDegrees));
  }

  private static Working work(
      double pattern, double knife, int seams, double capDegrees, double armholeDegrees) {
    double d = AllowanceChange.eachEdge(pattern, knife);
    double girth = AllowanceChange.girth(pattern, knife, seams);
    double mismatch =
        CurvedEdge.mismatch(d, Math.toRadians(capDegrees), Math.toRadians(armholeDegrees));
    WorkingBuilder board =
        Working.named("overlocker", Message.of("garment.overlocker.title"))
            .step(
                Message.of("garment.overlocker.step-difference"),
                "d = a − k",
                "%s − %s = %s".formatted(n(pattern), n(knife), Show.mm(d)))
            .result(Measured.of(girth, Unit.MM))
            .assume(Message.of("garment.assume.left-needle"))
            .assume(Message.of("garment.assume.try-on-first"))
            .caution(GarmentCaution.OVERLOCKER.caution())
            .source(Source.Kind.STANDARD, "ASTM D7722, 3.1: allowance to the deepest row")
            .source(Source.Kind.COMMON_PRACTICE, "trim first, or let the knife take the rest");
    if (d <= 0) {
      return tooNarrow(board, pattern, knife, girth, seams, d);
    }
    board
        .step(
            Message.of("garment.overlocker.step-trim"),
            "trim a − k from every edge; cut edge at the knife",
            "%s − %s = %s; needle at %s from the new edge: size kept"
                .formatted(n(pattern), n(knife), Show.mm(d), Show.mm(knife)))
        .step(
            Message.of("garment.overlocker.step-knife"),
            "needle on the seam line; knife takes a − k",
            "needle at %s from the cut edge, knife takes %s: size kept"
                .formatted(Show.mm(pattern), Show.mm(d)))
        .step(
            Message.of("garment.overlocker.step-wrong"),
            "untrimmed edge at the knife: 2 × n × d",
            "2 × %s × %s = %s".formatted(seams, n(d), Show.mm(girth)))
        .step(
            Message.of("garment.overlocker.step-wrong-curve"),
            "mismatch = d × (θ_cap + θ_armhole)",
            "%s × (%s + %s) = %s"
                .formatted(
                    n(d),
                    Show.fixed(Math.toRadians(capDegrees), 3),
                    Show.fixed(Math.toRadians(armholeDegrees), 3),
                    Show.length(mismatch, Unit.MM)));
    return board.says(
        Message.of(
            "garment.overlocker.says", Show.mm(d), Show.mm(girth), Show.length(mismatch, Unit.MM)));
  }

  private static Working tooNarrow(
      WorkingBuilder board, double pattern, double knife, double girth, int seams, double d) {
    if (d == 0) {
      return board.says(Message.of("garment.overlocker.says-same", Show.mm(knife)));
    }
    board.step(
        Message.of("garment.overlocker.step-narrow"),
        "cut edge at the knife: 2 × n × d",
        "2 × %s × (%s) = %s".formatted(seams, n(d), Show.mm(girth)));
    return board.says(
        Message.of(
            "garment.overlocker.says-narrow", Show.mm(-girth), Show.mm(-d), Show.mm(pattern)));
  }

  private static String n(double value) {
    return Show.upTo(value, 3);
  }
}
