package walebook.statistics;

import java.util.List;
import org.hipparchus.stat.StatUtils;
import org.jspecify.annotations.Nullable;

/**
 * The mean of some values and how well it is known.
 *
 * @param n number of values, at least 1
 * @param mean arithmetic mean
 * @param sd sample standard deviation (divisor n − 1), null from one value; 0 when no more than the
 *     rounding of doubles
 * @param least smallest value
 * @param greatest largest value
 */
public record Summary(int n, double mean, @Nullable Double sd, double least, double greatest) {

  public Summary {
    if (n < 1) {
      throw new IllegalArgumentException("n must be at least 1: " + n);
    }
    Require.finite("mean", mean);
    if (sd != null && !(Double.isFinite(sd) && sd >= 0)) {
      throw new IllegalArgumentException("sd must be finite and not negative: " + sd);
    }
  }

  /**
   * Mean and standard deviation by the corrected two-pass formula (Chan, Golub and LeVeque, The
   * American Statistician 37 (1983) 242–247), so that a large common offset costs no digits.
   *
   * @param values at least one, all finite
   */
  public static Summary of(List<Double> values) {
    return ofArray(Require.values("values", values));
  }

  static Summary ofArray(double[] values) {
    double least = StatUtils.min(values);
    double greatest = StatUtils.max(values);
    double mean = Math.min(greatest, Math.max(least, StatUtils.mean(values)));
    double size = Rounding.size(least, greatest);
    Double sd =
        values.length < 2
            ? null
            : Double.valueOf(Rounding.clean(Math.sqrt(StatUtils.variance(values)), size));
    return new Summary(values.length, mean, sd, least, greatest);
  }

  /** {@code sd / √n}, null from one value. */
  public @Nullable Double standardError() {
    return sd == null ? null : sd / Math.sqrt(n);
  }

  /**
   * Student's t-interval of the mean, {@code mean ± t(n−1) sd/√n}, for values that scatter about
   * normally (Student, Biometrika 6 (1908) 1–25).
   *
   * @return null from one value, and when all values are the same: equal readings show a coarse
   *     scale, not a mean known without error
   */
  public @Nullable Interval tInterval(double confidence) {
    Require.confidence(confidence);
    Double error = standardError();
    return error == null || error == 0
        ? null
        : Interval.around(mean, Quantiles.student(confidence, n - 1) * error, confidence);
  }

  /** The sum of squared deviations from the mean, 0 from one value. */
  public double sumOfSquares() {
    return sd == null ? 0 : sd * sd * (n - 1);
  }
}
