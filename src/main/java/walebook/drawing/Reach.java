package walebook.drawing;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;

/**
 * What a scale is chosen by: all that was measured but for what lies so far off that the rest would
 * stand in a heap, such as a length typed with a nought too many.
 *
 * <p>Left out are the fewest of the outermost values, one in ten at most, without which the rest
 * spans half or less of what all of them span, and only what lies further off than the rest spans;
 * of fewer than ten values chance alone makes such a gap, so there it takes a third. A row of two
 * or more keeps at least half of its values, since what most of a row do is no slip; and a scale of
 * up to ten whole steps keeps all, being readable as it is. What is left out is shown by {@link
 * OffScale}.
 *
 * @param least the smallest value that counts
 * @param most the greatest one, not below {@code least}
 */
record Reach(double least, double most) {
  private static final int LEAST_VALUES = 5;
  private static final int ONE_IN = 10;
  private static final int MOST_LEFT_OUT = 20;
  private static final double TIMES = 2;
  private static final double TIMES_OF_FEW = 3;
  private static final double FEW_STEPS = 10;

  /**
   * The reach of values in rows.
   *
   * @param rows at least one value in all
   */
  static Reach of(Collection<double[]> rows) {
    double[] all = rows.stream().flatMapToDouble(Arrays::stream).sorted().toArray();
    int last = all.length - 1;
    if (all.length < LEAST_VALUES || isShortLadder(all)) {
      return new Reach(all[0], all[last]);
    }
    int most = Math.min(MOST_LEFT_OUT, Math.max(1, all.length / ONE_IN));
    double times = all.length < ONE_IN ? TIMES_OF_FEW : TIMES;
    Reach found = new Reach(all[0], all[last]);
    int low = 0;
    int high = 0;
    // Two slips may lie as far from each other as from the rest.
    for (int out = 1; out <= most; out++) {
      for (int below = low; below <= out - high; below++) {
        int above = out - below;
        Reach rest = new Reach(all[below], all[last - above]);
        if (rest.isHeapIn(found, times)
            && (below == 0 || rest.isFarOff(all[below - 1]))
            && (above == 0 || rest.isFarOff(all[all.length - above]))
            && rest.keepsHalfOfEach(rows)) {
          found = rest;
          low = below;
          high = above;
          break;
        }
      }
    }
    return found;
  }

  /** The reach of one row. */
  static Reach of(double... row) {
    return of(List.of(row));
  }

  private static boolean isShortLadder(double[] sorted) {
    return sorted[sorted.length - 1] - sorted[0] <= FEW_STEPS
        && Arrays.stream(sorted).allMatch(each -> each == Math.rint(each));
  }

  /** Equal values take one place on any scale: they are no heap. */
  private boolean isHeapIn(Reach all, double times) {
    double span = most - least;
    boolean one = span <= 1e-9 * Math.max(Math.abs(least), Math.abs(most));
    return !one && times * span <= all.most - all.least;
  }

  private boolean isFarOff(double value) {
    return Math.max(least - value, value - most) >= most - least;
  }

  private boolean keepsHalfOfEach(Collection<double[]> rows) {
    return rows.stream()
        .allMatch(
            row ->
                row.length < 2 || 2 * Arrays.stream(row).filter(this::has).count() >= row.length);
  }

  boolean has(double value) {
    return value >= least && value <= most;
  }

  /** A value no further out than once the reach: an interval of few pieces may span far more. */
  double near(double value) {
    double room = most - least;
    return room > 0 ? Math.max(least - room, Math.min(most + room, value)) : value;
  }
}
