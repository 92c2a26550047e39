package walebook.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * A value axis: where a value stands along a line, and which round values get a tick.
 *
 * @param from value at the start
 * @param to value at the end, above {@code from}
 * @param start place of {@code from} in picture units
 * @param end place of {@code to}
 */
public record Axis(double from, double to, double start, double end) {
  public Axis {
    if (!(to > from && Double.isFinite(to - from))) {
      throw new IllegalArgumentException("an axis must end above its start: " + from + " " + to);
    }
  }

  /** An axis widened outwards to round ticks so that all values fit. */
  static Axis around(double least, double most, double start, double end, int ticks) {
    double high = most > least ? most : least + 1;
    double step = roundStep((high - least) / ticks);
    double from = Math.floor(least / step) * step;
    return new Axis(from, Math.ceil(high / step) * step, start, end);
  }

  /** Place of a value; beyond the ends it stays at the end. */
  public double place(double value) {
    double inside = Math.max(from, Math.min(to, value));
    return start + (inside - from) / (to - from) * (end - start);
  }

  /** Picture units for one unit of value. */
  double perUnit() {
    return (end - start) / (to - from);
  }

  /** Round values within the axis, about as many as asked. */
  List<Double> ticks(int about) {
    double step = roundStep((to - from) / about);
    List<Double> ticks = new ArrayList<>();
    long last = (long) Math.floor(to / step + 1e-9);
    for (long n = (long) Math.ceil(from / step - 1e-9); n <= last; n++) {
      ticks.add(n * step);
    }
    return ticks;
  }

  /** The next step of 1, 2 or 5 times a power of ten that is not smaller. */
  static double roundStep(double least) {
    double power = Math.pow(10, Math.floor(Math.log10(least)));
    for (double times : new double[] {1, 2, 5}) {
      if (times * power >= least * (1 - 1e-9)) {
        return times * power;
      }
    }
    return 10 * power;
  }
}
