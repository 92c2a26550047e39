package walebook.statistics;

/**
 * One source of scatter among several.
 *
 * @param estimate its variance as it came out, which chance can make negative
 * @param df degrees of freedom it rests on
 */
public record Component(double estimate, int df) {

  public Component {
    Require.finite("estimate", estimate);
  }

  /** The variance that counts, 0 when the estimate is negative. */
  public double variance() {
    return Math.max(0, estimate);
  }

  /** Square root of {@link #variance()}. */
  public double sd() {
    return Math.sqrt(variance());
  }

  /** True when the estimate was negative and counts as 0. */
  public boolean clamped() {
    return estimate < 0;
  }
}
