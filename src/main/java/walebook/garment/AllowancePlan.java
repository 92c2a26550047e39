package walebook.garment;

/**
 * How the pattern's allowance will be sewn.
 *
 * @param patternMm a, not negative
 * @param sewnMm b, to the deepest row of stitches; on an overlocker its needle-to-knife distance
 * @param trimmed whether the difference is trimmed off, before or by the knife
 * @param capTurn the turn of a sleeve's cap in radians; 0 without one
 * @param armholeTurn the turn of its armhole in radians; 0 without one
 */
public record AllowancePlan(
    double patternMm, double sewnMm, boolean trimmed, double capTurn, double armholeTurn) {
  public AllowancePlan {
    if (!(patternMm >= 0 && sewnMm >= 0 && Double.isFinite(patternMm + sewnMm))) {
      throw new IllegalArgumentException("allowances must not be negative");
    }
    if (!(capTurn >= 0 && armholeTurn >= 0 && Double.isFinite(capTurn + armholeTurn))) {
      throw new IllegalArgumentException("turns must not be negative");
    }
  }

  /** What each edge gains as it will be sewn, in mm. */
  public double edgeGain() {
    double d = AllowanceChange.eachEdge(patternMm, sewnMm);
    // Trimming mends too much only; an edge that is too narrow stays so.
    return trimmed && d > 0 ? 0 : d;
  }
}
