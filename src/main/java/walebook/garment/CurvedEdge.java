package walebook.garment;

import walebook.problem.Answer;
import walebook.quantity.Measured;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Verdict;
import walebook.working.Working;
import walebook.working.WorkingBuilder;

/**
 * What becomes of curved seam lines when less allowance is sewn and nothing trimmed: a line moved
 * by d along an edge that turns by θ changes its length by d θ (parallel curves). It grows where
 * the cut edge lies outside the curve, as on a sleeve's cap, and shrinks where it lies inside, as
 * on an armhole or a neckline.
 */
public final class CurvedEdge {
  private CurvedEdge() {}

  /** Change of length in mm: d in mm, turn in radians; for the outside of a curve. */
  public static double change(double edgeMm, double turn) {
    return edgeMm * turn;
  }

  /** How much longer the cap is than the armhole, beyond what the pattern planned, in mm. */
  public static double mismatch(double edgeMm, double capTurn, double armholeTurn) {
    return edgeMm * (capTurn + armholeTurn);
  }

  /** The seam line of a neckline after the change, in mm: N − θ d. */
  public static double neckline(double lengthMm, double edgeMm, double turn) {
    return lengthMm - change(edgeMm, turn);
  }

  /**
   * Works out cap against armhole.
   *
   * @param patternMm a, not negative
   * @param sewnMm b, not negative
   * @param capDegrees how much the cap turns from one end to the other, 0 to 360
   * @param armholeDegrees how much the armhole turns, 0 to 360
   */
  public static Answer<Working> capAndArmhole(
      double patternMm, double sewnMm, double capDegrees, double armholeDegrees) {
    return new GarmentNeeds()
        .notNegative("allowance", patternMm, "15 mm")
        .notNegative("sewn", sewnMm, "6 mm")
        .between("cap-turn", capDegrees, 0, 360)
        .between("armhole-turn", armholeDegrees, 0, 360)
        .then(() -> work(patternMm, sewnMm, capDegrees, armholeDegrees));
  }

  private static Working work(double pattern, double sewn, double cap, double armhole) {
    double d = AllowanceChange.eachEdge(pattern, sewn);
    double capTurn = Math.toRadians(cap);
    double armholeTurn = Math.toRadians(armhole);
    double mismatch = mismatch(d, capTurn, armholeTurn);
    WorkingBuilder board =
        Working.named("curved-edge", Message.of("garment.curve.title"))
            .step(
                Message.of("garment.allowance.step-edge"),
                "d = a − b",
                "%s − %s = %s".formatted(n(pattern), n(sewn), Show.mm(d)))
            .step(
                Message.of("garment.curve.step-turn"),
                "θ = degrees × π ÷ 180",
                "%s° = %s, %s° = %s"
                    .formatted(
                        n(cap), Show.fixed(capTurn, 3), n(armhole), Show.fixed(armholeTurn, 3)))
            .step(
                Message.of("garment.curve.step-cap"),
                "change = + d × θ",
                "%s × %s = %s"
                    .formatted(
                        n(d), Show.fixed(capTurn, 3), Show.length(change(d, capTurn), Unit.MM)))
            .step(
                Message.of("garment.curve.step-armhole"),
                "change = − d × θ",
                "−(%s × %s) = %s"
                    .formatted(
                        n(d),
                        Show.fixed(armholeTurn, 3),
                        Show.length(-change(d, armholeTurn), Unit.MM)))
            .step(
                Message.of("garment.curve.step-mismatch"),
                "mismatch = d × (θ_cap + θ_armhole)",
                "%s × (%s + %s) = %s"
                    .formatted(
                        n(d),
                        Show.fixed(capTurn, 3),
                        Show.fixed(armholeTurn, 3),
                        Show.length(mismatch, Unit.MM)))
            .result(Measured.of(mismatch, Unit.MM))
            .verdict(mismatch == 0 ? Verdict.MET : Verdict.NOT_MET)
            .assume(Message.of("garment.assume.not-trimmed"))
            .assume(Message.of("garment.assume.smooth-curve"))
            .source(Source.Kind.PUBLISHED, "parallel curves: length changes by distance × turning");
    if (mismatch == 0) {
      return board.says(Message.of("garment.allowance.says-same"));
    }
    return board.says(
        mismatch > 0
            ? Message.of("garment.curve.says-larger", Show.length(mismatch, Unit.MM), Show.mm(d))
            : Message.of(
                "garment.curve.says-smaller", Show.length(-mismatch, Unit.MM), Show.mm(-d)));
  }

  private static String n(double value) {
    return Show.upTo(value, 3);
  }
}
