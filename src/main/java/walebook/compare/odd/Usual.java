package walebook.compare.odd;

import walebook.record.MarkedValue;
import walebook.statistics.Robust;

/**
 * What a value is held against.
 *
 * @param middle where such values lie
 * @param scale robust standard deviation; 0 when they don't scatter
 * @param mostly from where to where most of them lie
 * @param among how many they are
 * @param expected true when the middle was worked out from pieces that were set otherwise
 */
record Usual(double middle, double scale, OddReading.Mostly mostly, int among, boolean expected) {

  /** Beyond what chance and what reading alone would bring. */
  boolean isFar(double number, MarkedValue value) {
    return isFar(number, middle, value);
  }

  boolean isFar(double number, double from, MarkedValue value) {
    double away = Math.abs(number - from);
    return scale > 0 && away > Robust.ODD * scale && away > Limits.readingAlone(value);
  }

  /** Robust standard deviations from the middle. */
  double z(double number) {
    return (number - middle) / scale;
  }
}
