package walebook.statistics;

import org.apache.commons.statistics.inference.FisherExactTest;

/**
 * Two rates from separate trials, and their difference.
 *
 * @param first the rate subtracted from
 * @param second the rate subtracted
 */
public record TwoRates(Proportion first, Proportion second) {

  /** {@code first − second}, from −1 to 1. */
  public double difference() {
    return first.share() - second.share();
  }

  /**
   * Newcombe's hybrid score interval for the difference: with Wilson limits l and u of each rate,
   * {@code d − √((p1−l1)² + (u2−p2)²)} to {@code d + √((u1−p1)² + (p2−l2)²)}. Stays in −1 to 1 and
   * keeps a width when both rates are 0 or 1.
   *
   * <p>R. G. Newcombe, Statistics in Medicine 17 (1998) 873–890, method 10.
   */
  public Interval newcombe(double confidence) {
    Interval one = first.wilson(confidence);
    Interval two = second.wilson(confidence);
    double p1 = first.share();
    double p2 = second.share();
    double d = p1 - p2;
    double low = d - Math.hypot(p1 - one.low(), two.high() - p2);
    double high = d + Math.hypot(one.high() - p1, p2 - two.low());
    return new Interval(Math.max(-1, low), Math.min(1, high), confidence);
  }

  /**
   * The two-sided p-value of Fisher's exact test: given both margins, the chance of a table at most
   * as likely as the one found. 1 when nobody or everybody had the property.
   *
   * <p>R. A. Fisher, Statistical Methods for Research Workers, 5th ed. (1934), section 21.02.
   */
  public double fisher() {
    int had = first.count() + second.count();
    if (had == 0 || had == first.n() + second.n()) {
      return 1;
    }
    int[][] table = {
      {first.count(), first.n() - first.count()}, {second.count(), second.n() - second.count()}
    };
    return FisherExactTest.withDefaults().test(table).getPValue();
  }
}
