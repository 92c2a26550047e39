package walebook.statistics;

import java.util.List;
import org.apache.commons.statistics.descriptive.Quantile;
import org.apache.commons.statistics.descriptive.Quantile.EstimationMethod;

/**
 * The five-number range: least, quartiles and greatest.
 *
 * @param n number of values, at least 1
 * @param least smallest value
 * @param lowerQuartile quarter of the values at or below
 * @param median middle value, the mean of the two middle ones when n is even
 * @param upperQuartile three quarters of the values at or below
 * @param greatest largest value
 */
public record FiveNumbers(
    int n,
    double least,
    double lowerQuartile,
    double median,
    double upperQuartile,
    double greatest) {

  /**
   * Quartiles interpolate linearly between order statistics at {@code 1 + (n−1)p}: definition 7 of
   * Hyndman and Fan, The American Statistician 50 (1996) 361–365, the one spreadsheets use.
   *
   * @param values at least one, all finite
   */
  public static FiveNumbers of(List<Double> values) {
    double[] numbers = Require.values("values", values);
    double[] cuts =
        Quantile.withDefaults().with(EstimationMethod.HF7).evaluate(numbers, 0, 0.25, 0.5, 0.75, 1);
    return new FiveNumbers(numbers.length, cuts[0], cuts[1], cuts[2], cuts[3], cuts[4]);
  }

  /**
   * The same of counted values.
   *
   * @param values at least one
   */
  public static FiveNumbers of(Counted values) {
    Require.some("values", values);
    double last = values.n() - 1;
    double[] cuts = values.at(0, 0.25 * last, 0.5 * last, 0.75 * last, last);
    return new FiveNumbers(values.n(), cuts[0], cuts[1], cuts[2], cuts[3], cuts[4]);
  }
}
