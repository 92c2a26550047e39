package walebook.statistics;

import org.apache.commons.statistics.interval.BinomialConfidenceInterval;

/**
 * A count out of n independent trials, with intervals for the rate behind it.
 *
 * <p>The intervals assume independent trials; several pieces from one pair of hands are not quite
 * that, and the true uncertainty is then larger.
 *
 * @param count how many had the property, 0 to n
 * @param n trials, at least 1: from none at all there is no interval to give
 */
public record Proportion(int count, int n) {

  public Proportion {
    if (n < 1) {
      throw new IllegalArgumentException("n must be at least 1: " + n);
    }
    if (count < 0 || count > n) {
      throw new IllegalArgumentException("count must lie between 0 and n: " + count + " of " + n);
    }
  }

  /** {@code count / n}, from 0 to 1. */
  public double share() {
    return (double) count / n;
  }

  /** The trials without the property, out of the same n. */
  public Proportion others() {
    return new Proportion(n - count, n);
  }

  /**
   * Wilson's score interval, {@code [p + z²/2n ± z √(p(1−p)/n + z²/4n²)] / (1 + z²/n)}, without
   * correction for continuity. Holds its confidence on average over the possible rates; stays in 0
   * to 1 and keeps a width at 0 of n and n of n.
   *
   * <p>E. B. Wilson, J. Am. Stat. Assoc. 22 (1927) 209–212; recommended for small n by Brown, Cai
   * and DasGupta, Statistical Science 16 (2001) 101–133.
   */
  public Interval wilson(double confidence) {
    return interval(BinomialConfidenceInterval.WILSON_SCORE, confidence);
  }

  /**
   * The exact interval of Clopper and Pearson, {@code B(α/2; x, n−x+1)} to {@code B(1−α/2; x+1,
   * n−x)} with B the beta quantile; 0 and 1 at the ends. Covers at least at its confidence for
   * every rate, so it is wider.
   *
   * <p>C. J. Clopper and E. S. Pearson, Biometrika 26 (1934) 404–413.
   */
  public Interval exact(double confidence) {
    return interval(BinomialConfidenceInterval.CLOPPER_PEARSON, confidence);
  }

  private Interval interval(BinomialConfidenceInterval method, double confidence) {
    var limits = method.fromErrorRate(n, count, 1 - Require.confidence(confidence));
    double low = count == 0 ? 0 : limits.getLowerBound();
    double high = count == n ? 1 : limits.getUpperBound();
    return new Interval(low, high, confidence);
  }
}
