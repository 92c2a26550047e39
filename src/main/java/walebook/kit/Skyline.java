package walebook.kit;

import java.util.Arrays;

/**
 * The upper edge of what is laid so far, as level stretches from left to right. The next piece
 * always goes on the lowest one.
 */
final class Skyline {
  /** Lengths nearer than this are taken as equal, mm; far below any tape. */
  static final double EVEN = 1e-6;

  private final double width;
  private double[] x = new double[16];
  private double[] y = new double[16];
  private int size = 1;
  private int lowest;

  Skyline(double width) {
    this.width = width;
  }

  /** Left end of the lowest stretch; the leftmost of several. */
  double x() {
    return x[lowest];
  }

  double y() {
    return y[lowest];
  }

  double gap() {
    return end(lowest) - x[lowest];
  }

  /** How far the edge rises at the lowest stretch's left; without end at the border. */
  double leftWall() {
    return lowest == 0 ? Double.POSITIVE_INFINITY : y[lowest - 1] - y[lowest];
  }

  double rightWall() {
    return lowest == size - 1 ? Double.POSITIVE_INFINITY : y[lowest + 1] - y[lowest];
  }

  private double end(int i) {
    return i == size - 1 ? width : x[i + 1];
  }

  /** Nothing fits here: fills the stretch up to its lower neighbour; false when it has none. */
  boolean raise() {
    double by = Math.min(leftWall(), rightWall());
    if (by == Double.POSITIVE_INFINITY) {
      return false;
    }
    y[lowest] += by;
    join();
    return true;
  }

  /**
   * Lays a piece on the lowest stretch.
   *
   * @return where its left edge lies
   */
  double lay(double across, double along, boolean atRight) {
    double from = atRight ? end(lowest) - across : x[lowest];
    double base = y[lowest];
    boolean whole = across >= gap() - EVEN;
    if (whole) {
      from = x[lowest];
      y[lowest] = base + along;
    } else if (atRight) {
      insert(lowest + 1, from, base + along);
    } else {
      insert(lowest, x[lowest], base + along);
      x[lowest + 1] = from + across;
    }
    join();
    return from;
  }

  private void insert(int at, double left, double level) {
    if (size == x.length) {
      x = Arrays.copyOf(x, 2 * size);
      y = Arrays.copyOf(y, 2 * size);
    }
    System.arraycopy(x, at, x, at + 1, size - at);
    System.arraycopy(y, at, y, at + 1, size - at);
    x[at] = left;
    y[at] = level;
    size++;
  }

  /** Joins neighbours of one level and finds the lowest again. */
  private void join() {
    int kept = 0;
    for (int i = 1; i < size; i++) {
      if (Math.abs(y[i] - y[kept]) > EVEN) {
        kept++;
        x[kept] = x[i];
        y[kept] = y[i];
      }
    }
    size = kept + 1;
    lowest = 0;
    for (int i = 1; i < size; i++) {
      if (y[i] < y[lowest] - EVEN) {
        lowest = i;
      }
    }
  }
}
