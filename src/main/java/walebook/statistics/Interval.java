package walebook.statistics;

/**
 * A two-sided confidence interval.
 *
 * @param low lower limit, finite
 * @param high upper limit, finite and not below {@code low}
 * @param confidence nominal coverage, strictly between 0 and 1
 */
public record Interval(double low, double high, double confidence) {

  public Interval {
    Require.finite("low", low);
    Require.finite("high", high);
    Require.confidence(confidence);
    if (low > high) {
      throw new IllegalArgumentException("low must not be above high: " + low + " > " + high);
    }
  }

  /** The interval {@code centre ± half}; {@code half} is not negative. */
  static Interval around(double centre, double half, double confidence) {
    return new Interval(centre - half, centre + half, confidence);
  }

  /** True when {@code value} lies inside or on a limit. */
  public boolean contains(double value) {
    return low <= value && value <= high;
  }

  /** {@code high − low}. */
  public double width() {
    return high - low;
  }
}
