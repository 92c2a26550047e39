package walebook.seam;

/**
 * A stitch as sewn, and how far its thread path can straighten. All lengths in mm.
 *
 * <p>One needle drop advances l and swings w ÷ k, so its thread path is p = √((w ÷ k)² + l²). A
 * zigzag can pull straight along the seam until the thread is taut: E_geo = 100 (p ÷ l − 1). The
 * geometry takes the thread as not stretching and the cloth as free to narrow; it is a model, and a
 * measured piece outranks it.
 *
 * @param widthMm w, the whole swing from side to side; 0 for a straight stitch
 * @param lengthMm l, seam per needle drop, over 0
 * @param steps k, needle drops per swing: 1 for a plain zigzag, 3 for a three-step one
 */
public record Zigzag(double widthMm, double lengthMm, int steps) {
  public Zigzag {
    if (!(Double.isFinite(widthMm) && widthMm >= 0)) {
      throw new IllegalArgumentException("widthMm must not be negative: " + widthMm);
    }
    if (!(Double.isFinite(lengthMm) && lengthMm > 0)) {
      throw new IllegalArgumentException("lengthMm must be over 0: " + lengthMm);
    }
    if (steps < 1) {
      throw new IllegalArgumentException("steps must be 1 or more: " + steps);
    }
  }

  /** A plain zigzag, or a straight stitch when the width is 0. */
  public static Zigzag plain(double widthMm, double lengthMm) {
    return new Zigzag(widthMm, lengthMm, 1);
  }

  /** l when a machine's dial means the full zigzag: there and back are 2 k needle drops. */
  public static double lengthOfDrop(double fullZigzagMm, int steps) {
    return fullZigzagMm / (2 * steps);
  }

  /** Swing of one needle drop, w ÷ k. */
  public double swingMm() {
    return widthMm / steps;
  }

  /** Thread path of one needle drop, p = √((w ÷ k)² + l²). */
  public double pathMm() {
    return Math.hypot(swingMm(), lengthMm);
  }

  /** E_geo in per cent; 0 for a straight stitch. */
  public double extensionPercent() {
    return 100 * (pathMm() / lengthMm - 1);
  }

  /**
   * Extension with reserves, in per cent: the thread taken up through the cloth's thickness joins
   * the path, T a stitch (301 lockstitch with all crimp given up), and the thread's own stretch
   * multiplies: ((p + T) ÷ l)(1 + E_thread) − 1.
   *
   * @param thicknessMm T of the sewn layers; 0 leaves the crimp out
   * @param threadStretchPercent of the thread; 0 leaves it out
   */
  public double extensionPercent(double thicknessMm, double threadStretchPercent) {
    return 100 * ((pathMm() + thicknessMm) / lengthMm * (1 + threadStretchPercent / 100) - 1);
  }

  /**
   * The width that lets a seam extend so far: w = k l √((1 + e)² − 1).
   *
   * @param targetPercent e, not negative, geometry alone
   */
  public static double widthFor(double targetPercent, double lengthMm, int steps) {
    double ratio = 1 + targetPercent / 100;
    return steps * lengthMm * Math.sqrt(ratio * ratio - 1);
  }
}
