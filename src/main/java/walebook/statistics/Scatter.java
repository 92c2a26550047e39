package walebook.statistics;

import org.jspecify.annotations.Nullable;

/**
 * The scatter left by a fit, and the intervals that follow from it.
 *
 * @param sumOfSquares of the residuals
 * @param df degrees of freedom, 0 when there is one parameter for every value
 * @param size greatest size among the values, to tell scatter from rounding
 * @param confidence of the intervals
 */
record Scatter(double sumOfSquares, int df, double size, double confidence) {

  static Scatter of(WithinBlocks fit, Layout layout, double confidence) {
    return new Scatter(
        fit.ssError, fit.dfError, layout.greatestSize, Require.confidence(confidence));
  }

  /** Residual standard deviation, 0 when below rounding, null without degrees of freedom. */
  @Nullable Double sd() {
    return df == 0 ? null : Double.valueOf(Rounding.clean(Math.sqrt(sumOfSquares / df), size));
  }

  /** Residual standard deviation when above 0, else null: no error can be told from it. */
  @Nullable Double known() {
    Double sd = sd();
    return sd == null || sd == 0 ? null : sd;
  }

  /** t-interval about an estimate whose variance is {@code variance} times the residuals'. */
  @Nullable Interval interval(double estimate, double variance) {
    Double sd = known();
    return sd == null
        ? null
        : Interval.around(
            estimate, Quantiles.student(confidence, df) * sd * Math.sqrt(variance), confidence);
  }
}
