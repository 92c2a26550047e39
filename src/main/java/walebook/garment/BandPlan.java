package walebook.garment;

import walebook.cloth.LengthChange;

/**
 * A folded band on an opening: lengths in mm.
 *
 * @param openingMm N, the opening on its seam line, over 0
 * @param ratio r, the band's joined length as a share of the opening, over 0
 * @param widthMm w, the band's finished width, over 0
 * @param joinMm allowance at each end where the band is joined into a ring, not negative
 * @param edgeMm allowance along each long edge, not negative
 */
public record BandPlan(
    double openingMm, double ratio, double widthMm, double joinMm, double edgeMm) {
  public BandPlan {
    over(openingMm, "openingMm");
    over(ratio, "ratio");
    over(widthMm, "widthMm");
    if (!(joinMm >= 0 && edgeMm >= 0 && Double.isFinite(joinMm + edgeMm))) {
      throw new IllegalArgumentException("allowances must not be negative");
    }
  }

  private static void over(double value, String name) {
    if (!(value > 0 && Double.isFinite(value))) {
      throw new IllegalArgumentException(name + " must be over 0: " + value);
    }
  }

  /** Length of the joined band on its seam line: b = r N. */
  public double lengthMm() {
    return ratio * openingMm;
  }

  /** Length to cut: b and an allowance at each end. */
  public double cutLengthMm() {
    return lengthMm() + 2 * joinMm;
  }

  /** Width to cut for a folded band: twice the finished width and an allowance at each edge. */
  public double cutWidthMm() {
    return 2 * (widthMm + edgeMm);
  }

  /** How far the band is stretched when it is sewn on: 100 (N − b) ÷ b; 0 when not shorter. */
  public double strain() {
    return Math.max(0, LengthChange.percent(lengthMm(), openingMm));
  }

  /** The ratio at which a band lies flat on an opening that turns by so much: 1 − w θ ÷ N. */
  public double flatRatio(double turn) {
    return 1 - widthMm * turn / openingMm;
  }
}
