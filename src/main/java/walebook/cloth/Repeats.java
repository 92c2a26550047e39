package walebook.cloth;

import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.statistics.distribution.TDistribution;
import org.hipparchus.stat.descriptive.moment.Mean;
import org.hipparchus.stat.descriptive.moment.StandardDeviation;
import org.jspecify.annotations.Nullable;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Measured;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Working;
import walebook.working.WorkingBuilder;

/** Several readings of one thing: mean, standard deviation, standard error and t-interval. */
public final class Repeats {
  private Repeats() {}

  /**
   * What n readings show.
   *
   * @param n how many, at least 1
   * @param standardDeviation of the sample (n − 1); null for a single reading
   * @param standardError of the mean; null for a single reading
   * @param halfWidth of the t-interval of the mean; null for a single reading
   */
  public record Spread(
      int n,
      double mean,
      @Nullable Double standardDeviation,
      @Nullable Double standardError,
      @Nullable Double halfWidth) {}

  /**
   * Reads the spread of readings.
   *
   * @param readings finite, at least one
   * @param confidencePercent of the interval, between 50 and 99.9
   */
  public static Spread spread(List<Double> readings, double confidencePercent) {
    double[] values = readings.stream().mapToDouble(Double::doubleValue).toArray();
    int n = values.length;
    double mean = new Mean().evaluate(values);
    if (n == 1) {
      return new Spread(1, mean, null, null, null);
    }
    double deviation = new StandardDeviation().evaluate(values, mean);
    double error = deviation / Math.sqrt(n);
    return new Spread(n, mean, deviation, error, quantile(n, confidencePercent) * error);
  }

  /**
   * Works out mean and spread.
   *
   * @param readings at least one
   * @param unit of the readings
   * @param confidencePercent of the interval, between 50 and 99.9
   * @return the working; its standard uncertainty is the standard error, none for a single reading
   */
  public static Answer<Working> of(List<Double> readings, Unit unit, double confidencePercent) {
    if (readings.isEmpty() || !readings.stream().allMatch(Double::isFinite)) {
      return Answer.bad(Problem.refuse("repeats.none", Place.field("readings"), "", "52; 54; 51"));
    }
    if (!(confidencePercent >= 50 && confidencePercent <= 99.9)) {
      return Answer.bad(
          Problem.refuse(
              "repeats.confidence",
              Place.field("confidence"),
              Show.upTo(confidencePercent, 2),
              "95"));
    }
    Spread spread = spread(readings, confidencePercent);
    WorkingBuilder board =
        Working.named("repeats", Message.of("cloth.repeats.title"))
            .step(
                Message.of("cloth.repeats.step-mean"),
                "mean = Σ x ÷ n",
                "(%s) ÷ %s = %s"
                    .formatted(
                        readings.stream().map(x -> n(x)).collect(Collectors.joining(" + ")),
                        spread.n,
                        n(spread.mean)))
            .assume(Message.of("cloth.assume.repeats"))
            .source(Source.Kind.STANDARD, "JCGM 100 (GUM), 4.2 and G.3");
    return Answer.good(ended(board, spread, unit, confidencePercent));
  }

  private static Working ended(WorkingBuilder board, Spread spread, Unit unit, double confidence) {
    Double deviation = spread.standardDeviation;
    Double error = spread.standardError;
    Double half = spread.halfWidth;
    if (deviation == null || error == null || half == null) {
      return board
          .result(Measured.of(spread.mean, unit))
          .says(Message.of("cloth.repeats.says-one", n(spread.mean) + sign(unit)));
    }
    return board
        .step(
            Message.of("cloth.repeats.step-deviation"),
            "s = √(Σ (x − mean)² ÷ (n − 1))",
            "√(%s ÷ %s) = %s"
                .formatted(n(deviation * deviation * (spread.n - 1)), spread.n - 1, n(deviation)))
        .step(
            Message.of("cloth.repeats.step-error"),
            "se = s ÷ √n",
            "%s ÷ √%s = %s".formatted(n(deviation), spread.n, n(error)))
        .step(
            Message.of("cloth.repeats.step-interval"),
            "mean ± t × se, n − 1 degrees of freedom",
            "%s ± %s × %s = %s to %s"
                .formatted(
                    n(spread.mean),
                    Show.fixed(quantile(spread.n, confidence), 3),
                    n(error),
                    n(spread.mean - half),
                    n(spread.mean + half)))
        .result(Measured.of(spread.mean, unit, error))
        .says(
            Message.of(
                "cloth.repeats.says",
                n(spread.mean) + sign(unit),
                n(deviation),
                n(spread.mean - half),
                n(spread.mean + half) + sign(unit),
                Show.upTo(confidence, 1),
                Integer.toString(spread.n)));
  }

  /** Two-sided quantile of Student's t with n − 1 degrees of freedom. */
  private static double quantile(int n, double confidencePercent) {
    return TDistribution.of(n - 1).inverseSurvivalProbability((1 - confidencePercent / 100) / 2);
  }

  private static String sign(Unit unit) {
    return unit.sign().isEmpty() ? "" : " " + unit.sign();
  }

  private static String n(double value) {
    return Show.upTo(value, 3);
  }
}
