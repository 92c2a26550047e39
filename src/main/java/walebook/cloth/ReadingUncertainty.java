package walebook.cloth;

/**
 * Standard uncertainties of stretch, growth and recovery from how finely the lengths are read, to
 * first order (JCGM 100, GUM, 5.1.2). All lengths and their uncertainties share one unit; outcomes
 * are percentage points.
 */
public final class ReadingUncertainty {
  private ReadingUncertainty() {}

  /**
   * u = d ÷ √12: a length read to the nearest d lies anywhere within half of d either side (GUM
   * 4.3.7, rectangular distribution of full width d).
   *
   * @param readTo d, not negative
   */
  public static double ofResolution(double readTo) {
    if (!(readTo >= 0) || Double.isInfinite(readTo)) {
      throw new IllegalArgumentException("readTo must be finite and not negative: " + readTo);
    }
    return readTo / Math.sqrt(12);
  }

  /** u(S) = (100 ÷ L0) √(u1² + (L1 ÷ L0)² u0²); the same holds for growth with L2 for L1. */
  public static double ofChange(double before, double after, double uBefore, double uAfter) {
    return 100 / before * Math.hypot(uAfter, after / before * uBefore);
  }

  /**
   * u(R) of R = 100 (L1 − L2) ÷ (L1 − L0), with e = L1 − L0: (100 ÷ e) √(u2² + ((L2 − L0) ÷ e)² u1²
   * + ((L1 − L2) ÷ e)² u0²), the partial derivatives of R.
   */
  public static double ofRecovery(
      double gauge, double stretched, double released, double u0, double u1, double u2) {
    double extension = stretched - gauge;
    return 100
        / extension
        * combined(
            u2, (released - gauge) / extension * u1, (stretched - released) / extension * u0);
  }

  /** Independent parts together, in quadrature: √(Σ u²) (GUM 5.1.2). */
  public static double combined(double... parts) {
    double sum = 0;
    for (double part : parts) {
      sum += part * part;
    }
    return Math.sqrt(sum);
  }
}
