package walebook.statistics;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The difference of two adjusted means, {@code first − second}.
 *
 * @param first level subtracted from
 * @param second level subtracted
 * @param estimate in the unit of the values
 * @param error standard error; null without degrees of freedom or without scatter
 * @param interval t-interval for this difference alone; null as {@code error}
 * @param t {@code estimate / error}; null as {@code error}
 * @param p two-sided p-value for this difference alone; null as {@code error}
 * @param holm p adjusted by Holm for all differences it was listed with; null as {@code error}
 */
public record Difference(
    String first,
    String second,
    double estimate,
    @Nullable Double error,
    @Nullable Interval interval,
    @Nullable Double t,
    @Nullable Double p,
    @Nullable Double holm) {

  static Difference of(
      String first, String second, double estimate, Scatter scatter, double variance) {
    Double sd = scatter.known();
    if (sd == null) {
      return new Difference(first, second, estimate, null, null, null, null, null);
    }
    double error = sd * Math.sqrt(variance);
    double t = estimate / error;
    double p = Quantiles.studentTwoSided(t, scatter.df());
    Interval interval = scatter.interval(estimate, variance);
    return new Difference(first, second, estimate, error, interval, t, p, p);
  }

  /** The same seen from the other side. */
  public Difference turned() {
    Interval other =
        interval == null
            ? null
            : new Interval(-interval.high(), -interval.low(), interval.confidence());
    return new Difference(
        /* first= */ second,
        /* second= */ first,
        -estimate,
        error,
        other,
        t == null ? null : -t,
        p,
        holm);
  }

  /** The same differences, adjusted for being looked at together. */
  static List<Difference> adjusted(List<Difference> together) {
    List<Double> alone = new ArrayList<>();
    for (Difference one : together) {
      if (one.p != null) {
        alone.add(one.p);
      }
    }
    if (alone.size() < together.size()) {
      return List.copyOf(together);
    }
    List<Double> holm = Holm.adjust(alone);
    List<Difference> all = new ArrayList<>();
    for (int i = 0; i < together.size(); i++) {
      Difference d = together.get(i);
      all.add(
          new Difference(
              d.first, d.second, d.estimate, d.error, d.interval, d.t, d.p, holm.get(i)));
    }
    return List.copyOf(all);
  }
}
