package walebook.statistics;

import org.apache.commons.statistics.distribution.FDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;

/** Two-sided quantiles and tail areas of the normal, Student's t and F distributions. */
final class Quantiles {
  private Quantiles() {}

  static double normal(double confidence) {
    double tail = (1 - Require.confidence(confidence)) / 2;
    return NormalDistribution.of(0, 1).inverseSurvivalProbability(tail);
  }

  static double student(double confidence, int df) {
    double tail = (1 - Require.confidence(confidence)) / 2;
    return TDistribution.of(df).inverseSurvivalProbability(tail);
  }

  static double studentTwoSided(double t, int df) {
    return Math.min(1, 2 * TDistribution.of(df).survivalProbability(Math.abs(t)));
  }

  static double f(double upperTail, int dfAbove, int dfBelow) {
    return FDistribution.of(dfAbove, dfBelow).inverseSurvivalProbability(upperTail);
  }

  static double fTail(double f, int dfAbove, int dfBelow) {
    return FDistribution.of(dfAbove, dfBelow).survivalProbability(f);
  }
}
