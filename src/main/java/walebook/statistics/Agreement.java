package walebook.statistics;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How well several people agree who measured the same thing: repeatability, reproducibility and
 * each one's bias.
 *
 * <p>ISO 5725-2 and ASTM E691, with p people and n_i readings each: {@code s_r² = SSw/(N−p)};
 * {@code s_L² = (SSb/(p−1) − s_r²)/n0} with {@code n0 = (N − Σn_i²/N)/(p−1)}, set to 0 when
 * negative, and then said so; {@code s_R² = s_r² + s_L²}; limits r = 2.8 s_r and R = 2.8 s_R, which
 * two single results exceed about once in twenty.
 *
 * @param oneWay the analysis of variance behind it
 * @param meanOfMeans unweighted mean of the people's means, what biases are taken against
 * @param sdOfMeans standard deviation of the people's means, null with one person
 * @param n0 readings per person that count, 0 with one person
 * @param repeatabilitySd s_r: one person measuring again; null when nobody measured twice
 * @param betweenVariance s_L² before it is cut off at 0; null with one person or without s_r
 * @param betweenSd s_L, 0 when {@link #clamped()}; null as {@code betweenVariance}
 * @param reproducibilitySd s_R: another person measuring; null as {@code betweenVariance}
 * @param members each person, in the order given
 */
public record Agreement(
    OneWay oneWay,
    double meanOfMeans,
    @Nullable Double sdOfMeans,
    double n0,
    @Nullable Double repeatabilitySd,
    @Nullable Double betweenVariance,
    @Nullable Double betweenSd,
    @Nullable Double reproducibilitySd,
    List<Member> members) {

  /** What the standards multiply a standard deviation by for a limit, 1.96 √2 rounded. */
  public static final double LIMIT = 2.8;

  public Agreement {
    members = List.copyOf(members);
  }

  /**
   * The agreement of two or more people; with one, only s_r can be told.
   *
   * @param samples one for each person, with different names, of any sizes
   * @param confidence of the biases' intervals
   */
  public static Agreement of(List<Sample> samples, double confidence) {
    Require.confidence(confidence);
    OneWay oneWay = OneWay.of(samples);
    double[] means = oneWay.groups().stream().mapToDouble(g -> g.summary().mean()).toArray();
    Summary spread = Summary.ofArray(means);
    int p = means.length;
    double n = oneWay.n();
    double squares =
        oneWay.groups().stream().mapToDouble(g -> (double) g.summary().n() * g.summary().n()).sum();
    double n0 = p == 1 ? 0 : (n - squares / n) / (p - 1);
    Double sr = oneWay.residualSd();
    Double between =
        p == 1 || sr == null ? null : Double.valueOf((oneWay.ssBetween() / (p - 1) - sr * sr) / n0);
    Double sl = between == null ? null : Double.valueOf(Math.sqrt(Math.max(0, between)));
    return new Agreement(
        oneWay,
        spread.mean(),
        spread.sd(),
        n0,
        sr,
        between,
        sl,
        sl == null || sr == null ? null : Double.valueOf(Math.hypot(sr, sl)),
        Member.all(oneWay, spread, confidence));
  }

  /** True when s_L² came out negative and counts as 0: people differ less than chance would. */
  public boolean clamped() {
    return betweenVariance != null && betweenVariance < 0;
  }

  /** r = 2.8 s_r: two readings of one person seldom differ by more. */
  public @Nullable Double repeatabilityLimit() {
    return repeatabilitySd == null ? null : LIMIT * repeatabilitySd;
  }

  /** R = 2.8 s_R: single readings of two people seldom differ by more. */
  public @Nullable Double reproducibilityLimit() {
    return reproducibilitySd == null ? null : LIMIT * reproducibilitySd;
  }

  /**
   * What the means of two people may differ by without its meaning anything: {@code 2.8 √(s_R² −
   * s_r² (1 − 1/(2 n1) − 1/(2 n2)))} (ISO 5725-6, critical difference); R when both read once.
   *
   * @param first how often the one read, at least 1
   * @param second how often the other read, at least 1
   * @return null as {@link #reproducibilitySd()}
   */
  public @Nullable Double criticalDifference(int first, int second) {
    if (first < 1 || second < 1) {
      throw new IllegalArgumentException("readings must be at least 1: " + first + ", " + second);
    }
    if (repeatabilitySd == null || betweenSd == null) {
      return null;
    }
    double share = (1.0 / first + 1.0 / second) / 2;
    return LIMIT * Math.sqrt(betweenSd * betweenSd + repeatabilitySd * repeatabilitySd * share);
  }

  /**
   * Beyond this, an h is odd at the 0.5 % level: {@code (p−1) t / √(p (t² + p − 2))} with t on p −
   * 2 degrees of freedom (ASTM E691, annex).
   *
   * @return null with fewer than three people, where every h is the same
   */
  public @Nullable Double criticalH() {
    int p = members.size();
    if (p < 3) {
      return null;
    }
    double t = Quantiles.student(1 - Member.LEVEL, p - 2);
    return (p - 1) * t / Math.sqrt(p * (t * t + p - 2));
  }
}
