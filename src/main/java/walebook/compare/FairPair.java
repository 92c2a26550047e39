package walebook.compare;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import walebook.statistics.Interval;

/**
 * Two settings and what can be said of their difference, {@code first − second}. Intervals are so
 * wide that those of all pairs hold at once.
 *
 * @param first levels
 * @param second levels
 * @param basis what the difference rests on
 * @param estimate in the outcome's unit, points of percent for a rate; null when not known
 * @param low lower limit; null when there is none to give
 * @param high upper limit; null when there is none to give
 * @param p Holm's p for all pairs together; null when not known
 * @param size what the limits allow to be said
 * @param onlyMeasuring true when the difference is no more than measuring alone makes; null when
 *     the measuring error is not known
 * @param morePieces how many more pieces of these two would be likely to tell if what was seen is
 *     so; null when that can't honestly be said, or is not needed
 */
public record FairPair(
    List<String> first,
    List<String> second,
    Basis basis,
    @Nullable Double estimate,
    @Nullable Double low,
    @Nullable Double high,
    @Nullable Double p,
    Size size,
    @Nullable Boolean onlyMeasuring,
    @Nullable Integer morePieces) {

  /** What a difference rests on. */
  public enum Basis {
    /** Means adjusted for who sewed. */
    ADJUSTED_MEANS,
    /** Medians by the product-limit estimate, not adjusted. */
    MEDIANS,
    /** Shares that held, not adjusted. */
    RATES,
    /** Nothing joins the two. */
    NONE
  }

  /** What can be said of a difference. */
  public enum Size {
    /** Surely more than matters. */
    MORE,
    /** Surely less than matters. */
    LESS,
    /** Surely a difference; how large one must be to matter was not set. */
    DIFFERS,
    /** Surely a difference, but whether it matters can't be told yet. */
    DIFFERS_MAYBE_LITTLE,
    /** Can't tell yet. */
    CANT_TELL,
    /** Nothing compares the two: no student sewed both, nor any chain of others. */
    NOT_COMPARABLE
  }

  public FairPair {
    first = List.copyOf(first);
    second = List.copyOf(second);
  }

  /** What limits allow to be said about a difference. */
  static Size size(@Nullable Double low, @Nullable Double high, @Nullable Double matters) {
    double least = low == null ? Double.NEGATIVE_INFINITY : low;
    double most = high == null ? Double.POSITIVE_INFINITY : high;
    boolean differs = least > 0 || most < 0;
    if (matters == null) {
      return differs ? Size.DIFFERS : Size.CANT_TELL;
    }
    if (least > matters || most < -matters) {
      return Size.MORE;
    }
    if (least > -matters && most < matters) {
      return Size.LESS;
    }
    return differs ? Size.DIFFERS_MAYBE_LITTLE : Size.CANT_TELL;
  }

  /** True when a difference of any size is sure. */
  public boolean isSure() {
    return size == Size.MORE || size == Size.DIFFERS || size == Size.DIFFERS_MAYBE_LITTLE;
  }

  /** True when one or both of the two are among these. */
  public boolean isOfAny(Set<List<String>> settings) {
    return settings.contains(first) || settings.contains(second);
  }

  /** The two in the other order. */
  public FairPair turned() {
    return new FairPair(
        /* first= */ second,
        /* second= */ first,
        basis,
        negative(estimate),
        negative(high),
        negative(low),
        p,
        size,
        onlyMeasuring,
        morePieces);
  }

  private static @Nullable Double negative(@Nullable Double value) {
    return value == null ? null : Double.valueOf(0.0 - value);
  }

  static @Nullable Double low(@Nullable Interval interval) {
    return interval == null ? null : Double.valueOf(interval.low());
  }

  static @Nullable Double high(@Nullable Interval interval) {
    return interval == null ? null : Double.valueOf(interval.high());
  }
}
