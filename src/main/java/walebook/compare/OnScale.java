package walebook.compare;

import org.jspecify.annotations.Nullable;
import walebook.statistics.AdjustedMean;
import walebook.statistics.Interval;

/**
 * Where means of an outcome can lie at all: a look between 1 and 5, a time above 0 minutes. Limits
 * reckoned from scatter know nothing of that, and no truth lies beyond.
 *
 * @param least in the outcome's unit
 * @param greatest in the outcome's unit
 */
record OnScale(double least, double greatest) {
  private static final double WORST_LOOK = 1;
  private static final double BEST_LOOK = 5;

  static OnScale of(Outcome outcome) {
    return switch (outcome) {
      case GRADE -> new OnScale(WORST_LOOK, BEST_LOOK);
      case TIME -> new OnScale(0, Double.POSITIVE_INFINITY);
      case SEAM_SHARE, SEAM_STRETCH, EDGE_CHANGE, HELD ->
          new OnScale(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    };
  }

  /** The part of an interval that lies on the scale; all of it where none does. */
  Interval cut(Interval interval) {
    boolean off = interval.high() <= least || interval.low() >= greatest;
    return off
        ? interval
        : new Interval(
            Math.max(least, interval.low()),
            Math.min(greatest, interval.high()),
            interval.confidence());
  }

  /** A mean and its interval on the scale; null stays null. */
  @Nullable AdjustedMean cut(@Nullable AdjustedMean mean) {
    return mean == null
        ? null
        : new AdjustedMean(
            mean.level(),
            mean.group(),
            mean.raw(),
            mean.blocks(),
            Math.min(greatest, Math.max(least, mean.mean())),
            mean.error(),
            mean.interval() == null ? null : cut(mean.interval()));
  }

  /** True where a limit of a difference is further out than any two values lie apart. */
  boolean isBeyond(FairPair pair) {
    double most = greatest - least;
    return (pair.low() != null && pair.low() < -most)
        || (pair.high() != null && pair.high() > most);
  }
}
