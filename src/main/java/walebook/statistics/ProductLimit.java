package walebook.statistics;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * The product-limit estimate of the share that lasts beyond a value, when some only held to a
 * value: {@code S(x) = Π_{x_i ≤ x} (1 − d_i/n_i)}.
 *
 * <p>E. L. Kaplan and P. Meier, J. Am. Stat. Assoc. 53 (1958) 457–481; variance {@code S² Σ d/(n(n
 * − d))} by M. Greenwood (1926); intervals on the log(−log) scale, so that they stay in 0 to 1 (J.
 * D. Kalbfleisch and R. L. Prentice, The Statistical Analysis of Failure Time Data, 1980, section
 * 1.3). What held to the very value where another ended counts as still there. Censoring must not
 * depend on how near the end was.
 *
 * @param n all values, at least 1
 * @param ended how many were seen to end
 * @param greatest greatest value, ended or held: beyond it nothing is known unless S is 0
 * @param steps one for each value where something ended, rising
 * @param confidence of all intervals
 */
public record ProductLimit(int n, int ended, double greatest, List<Step> steps, double confidence) {

  private static final double ROUNDING = 1e-12;

  /**
   * A step of the estimate.
   *
   * @param value where something ended
   * @param atRisk how many had lasted up to it
   * @param ended how many ended at it
   * @param survival S from this value on
   * @param error Greenwood's standard error, 0 when S is 0
   * @param interval of S; null when S is 0
   */
  public record Step(
      double value,
      int atRisk,
      int ended,
      double survival,
      double error,
      @Nullable Interval interval) {}

  public ProductLimit {
    steps = List.copyOf(steps);
  }

  /**
   * The estimate.
   *
   * @param lifetimes at least one
   * @param confidence of all intervals
   */
  public static ProductLimit of(List<Lifetime> lifetimes, double confidence) {
    if (lifetimes.isEmpty()) {
      throw new IllegalArgumentException("lifetimes must hold at least one lifetime");
    }
    TreeMap<Double, int[]> counts = new TreeMap<>();
    for (Lifetime one : lifetimes) {
      counts.computeIfAbsent(one.value() + 0.0, v -> new int[2])[one.ended() ? 0 : 1]++;
    }
    return of(counts, lifetimes.size(), confidence);
  }

  /**
   * The same of counted values.
   *
   * @param ended where they were seen to end
   * @param held how far the others held; of both together at least one
   */
  public static ProductLimit of(Counted ended, Counted held, double confidence) {
    Require.some("ended and held", ended.isEmpty() ? held : ended);
    TreeMap<Double, int[]> counts = new TreeMap<>();
    ended.rising().forEach((at, n) -> counts.computeIfAbsent(at, v -> new int[2])[0] += n[0]);
    held.rising().forEach((at, n) -> counts.computeIfAbsent(at, v -> new int[2])[1] += n[0]);
    return of(counts, ended.n() + held.n(), confidence);
  }

  /** Of how many ended, and how many only held, at each value. */
  private static ProductLimit of(TreeMap<Double, int[]> counts, int n, double confidence) {
    double z = Quantiles.normal(confidence);
    List<Step> steps = new ArrayList<>();
    int atRisk = n;
    int ended = 0;
    double survival = 1;
    double sum = 0;
    for (var at : counts.entrySet()) {
      int ends = at.getValue()[0];
      if (ends > 0) {
        survival *= (double) (atRisk - ends) / atRisk;
        sum += ends == atRisk ? 0 : (double) ends / ((double) atRisk * (atRisk - ends));
        double error = survival * Math.sqrt(sum);
        Interval interval = interval(survival, sum, z, confidence);
        steps.add(new Step(at.getKey(), atRisk, ends, survival, error, interval));
        ended += ends;
      }
      atRisk -= ends + at.getValue()[1];
    }
    return new ProductLimit(n, ended, counts.lastKey(), steps, confidence);
  }

  private static @Nullable Interval interval(
      double survival, double sum, double z, double confidence) {
    if (survival == 0) {
      return null;
    }
    double stretch = Math.exp(z * Math.sqrt(sum) / -Math.log(survival));
    return new Interval(Math.pow(survival, stretch), Math.pow(survival, 1 / stretch), confidence);
  }

  /**
   * The estimated share that lasts beyond {@code value}.
   *
   * @return null beyond the greatest value while S is above 0: nobody was watched so far
   */
  public @Nullable Double survivalAt(double value) {
    Require.finite("value", value);
    double survival = 1;
    for (Step step : steps) {
      if (step.value <= value) {
        survival = step.survival;
      }
    }
    return value > greatest && survival > 0 ? null : survival;
  }

  /** The value by which half had ended; null when not reached. */
  public @Nullable Double median() {
    return quantile(0.5);
  }

  /**
   * The least value at which S is no more than {@code 1 − share}.
   *
   * @param share strictly between 0 and 1
   * @return null when so many had not ended
   */
  public @Nullable Double quantile(double share) {
    return firstAtMost(1 - Require.confidence(share), Step::survival);
  }

  /**
   * Limits of a quantile: the values at which the lower and the upper limit of S come down to
   * {@code 1 − share} (R. Brookmeyer and J. Crowley, Biometrics 38 (1982) 29–41).
   */
  public Limits quantileLimits(double share) {
    double level = 1 - Require.confidence(share);
    return new Limits(
        firstAtMost(level, s -> s.interval == null ? 0.0 : s.interval.low()),
        firstAtMost(level, s -> s.interval == null ? null : s.interval.high()),
        confidence);
  }

  /**
   * Limits that may not have been reached.
   *
   * @param low null when not reached
   * @param high null when not reached: the quantile may lie beyond everything seen
   * @param confidence as for intervals
   */
  public record Limits(@Nullable Double low, @Nullable Double high, double confidence) {}

  private @Nullable Double firstAtMost(double level, Function<Step, @Nullable Double> limit) {
    for (Step step : steps) {
      Double found = limit.apply(step);
      if (found != null && found <= level + ROUNDING) {
        return step.value;
      }
    }
    return null;
  }
}
