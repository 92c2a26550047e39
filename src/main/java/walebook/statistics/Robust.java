package walebook.statistics;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.statistics.descriptive.Median;
import org.hipparchus.stat.StatUtils;
import org.jspecify.annotations.Nullable;

/**
 * Median and a spread that one odd reading cannot inflate, to find readings worth a second look.
 *
 * <p>B. Iglewicz and D. C. Hoaglin, How to Detect and Handle Outliers (ASQC, 1993): the modified
 * z-score {@code 0.6745 (x − median) / MAD}, odd when beyond 3.5. A flag asks for a look at the
 * piece; it is no reason to drop it.
 *
 * @param n number of values, at least 1
 * @param median middle value
 * @param mad median of the absolute deviations from the median
 * @param meanDeviation mean of the absolute deviations from the median
 * @param scale what deviations are divided by, in the values' unit; 0 when all are the same
 * @param from what the scale was taken from
 */
public record Robust(
    int n, double median, double mad, double meanDeviation, double scale, ScaleFrom from) {

  /** Beyond this many robust standard deviations a reading is odd. */
  public static final double ODD = 3.5;

  static final double MAD_TO_SD = 1 / 0.6745;
  private static final double MEAN_DEVIATION_TO_SD = 1.253314;

  /** What a robust scale was taken from. */
  public enum ScaleFrom {
    /** The median absolute deviation, as usual. */
    MAD,
    /** The mean absolute deviation, since over half of the values are the same. */
    MEAN_DEVIATION,
    /** Nothing: all values are the same. */
    NONE
  }

  /**
   * Median, MAD and scale.
   *
   * @param values at least one, all finite
   */
  public static Robust of(List<Double> values) {
    double[] numbers = Require.values("values", values);
    double median = Median.withDefaults().evaluate(numbers.clone());
    double[] away =
        IntStream.range(0, numbers.length)
            .mapToDouble(i -> Math.abs(numbers[i] - median))
            .toArray();
    double size = Rounding.size(StatUtils.min(numbers), StatUtils.max(numbers));
    double meanDeviation = Rounding.clean(StatUtils.mean(away), size);
    double mad = Rounding.clean(Median.withDefaults().evaluate(away), size);
    return of(numbers.length, median, mad, meanDeviation);
  }

  /**
   * The same of counted values.
   *
   * @param values at least one
   */
  public static Robust of(Counted values) {
    Require.some("values", values);
    double[] cuts = values.at(0, (values.n() - 1) / 2.0, values.n() - 1);
    double size = Rounding.size(cuts[0], cuts[2]);
    Counted away = values.map(value -> Math.abs(value - cuts[1]));
    double meanDeviation = Rounding.clean(away.moments().summary().mean(), size);
    return of(values.n(), cuts[1], Rounding.clean(away.median(), size), meanDeviation);
  }

  private static Robust of(int n, double median, double mad, double meanDeviation) {
    ScaleFrom from =
        mad > 0 ? ScaleFrom.MAD : meanDeviation > 0 ? ScaleFrom.MEAN_DEVIATION : ScaleFrom.NONE;
    double scale =
        switch (from) {
          case MAD -> MAD_TO_SD * mad;
          case MEAN_DEVIATION -> MEAN_DEVIATION_TO_SD * meanDeviation;
          case NONE -> 0;
        };
    return new Robust(n, median, mad, meanDeviation, scale, from);
  }

  /** The modified z-score of a value, null when the values had no spread. */
  public @Nullable Double z(double value) {
    return scale == 0 ? null : (Require.finite("value", value) - median) / scale;
  }

  /** True when the z-score is known and beyond {@link #ODD}. */
  public boolean isOdd(double value) {
    return scale > 0 && Math.abs(value - median) > ODD * scale;
  }
}
