package walebook.statistics;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One person among several who measured the same thing: bias, and the consistency statistics h and
 * k of ASTM E691.
 *
 * @param name as given
 * @param summary of the person's readings
 * @param bias the person's mean less the unweighted mean of all people's means
 * @param biasInterval t-interval of the bias from the pooled s_r, these people taken as they are:
 *     {@code u² = s_r² [(1−1/p)²/n_i + Σ_{j≠i} 1/(p² n_j)]}; null with one person or without
 *     scatter
 * @param h {@code bias / sdOfMeans}; null with one person or when all means are the same
 * @param k {@code s_i / s_r}; null from one reading or without scatter
 * @param criticalK beyond this a k is odd at the 0.5 % level, from F on n_i − 1 and the others'
 *     degrees of freedom; null when k is, or when nobody else measured twice
 */
public record Member(
    String name,
    Summary summary,
    double bias,
    @Nullable Interval biasInterval,
    @Nullable Double h,
    @Nullable Double k,
    @Nullable Double criticalK) {

  static final double LEVEL = 0.005;

  static List<Member> all(OneWay oneWay, Summary means, double confidence) {
    double inverse = oneWay.groups().stream().mapToDouble(g -> 1.0 / g.summary().n()).sum();
    return oneWay.groups().stream()
        .map(group -> of(group, oneWay, means, inverse, confidence))
        .toList();
  }

  private static Member of(
      OneWay.Group group, OneWay oneWay, Summary means, double inverse, double confidence) {
    Summary own = group.summary();
    int p = means.n();
    int df = oneWay.dfWithin();
    Double residualSd = oneWay.residualSd();
    double sr = residualSd == null ? 0 : residualSd;
    double bias = own.mean() - means.mean();
    Interval interval = null;
    if (sr > 0 && p > 1) {
      double variance = (1 - 2.0 / p) / own.n() + inverse / p / p;
      double u = sr * Math.sqrt(variance);
      interval = Interval.around(bias, Quantiles.student(confidence, df) * u, confidence);
    }
    Double sdOfMeans = means.sd();
    Double h = sdOfMeans == null || sdOfMeans == 0 ? null : Double.valueOf(bias / sdOfMeans);
    Double sd = own.sd();
    if (sr == 0 || sd == null) {
      return new Member(group.name(), own, bias, interval, h, null, null);
    }
    return new Member(group.name(), own, bias, interval, h, sd / sr, criticalK(own.n() - 1, df));
  }

  private static @Nullable Double criticalK(int dfOwn, int dfAll) {
    int dfOthers = dfAll - dfOwn;
    if (dfOthers < 1) {
      return null;
    }
    double f = Quantiles.f(LEVEL, dfOwn, dfOthers);
    return Math.sqrt((double) dfAll / dfOwn / (1 + dfOthers / (dfOwn * f)));
  }
}
