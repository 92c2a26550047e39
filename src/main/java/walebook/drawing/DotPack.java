package walebook.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Moves dots of one row up or down, never sideways, until none hides another or the pile is full.
 */
final class DotPack {
  /** Room that the arrow of a held piece takes to its right. */
  private static final double ARROW = 6;

  /** Steps of half a dot tried up and down before a pile is full. */
  private static final int MOST_TURNS = 36;

  /**
   * A dot with its place above (negative) or below the middle of its row.
   *
   * @param up in picture units
   */
  record Placed(DotRow.Dot dot, double up) {}

  private final Axis axis;
  private final double apart;
  private final List<Placed> placed = new ArrayList<>();

  /**
   * How far to the right each place up or down is taken: dots come from left to right, so the last
   * one there stands nearest, whatever number came before it.
   */
  private final double[] taken = new double[MOST_TURNS + 1];

  private DotPack(Axis axis, double radius) {
    this.axis = axis;
    this.apart = 2 * radius + 0.8;
    Arrays.fill(taken, Double.NEGATIVE_INFINITY);
  }

  static List<Placed> of(List<DotRow.Dot> dots, Axis axis, double radius) {
    DotPack pack = new DotPack(axis, radius);
    dots.stream().sorted(Comparator.comparingDouble(DotRow.Dot::value)).forEach(pack::put);
    return pack.placed;
  }

  private void put(DotRow.Dot dot) {
    double x = axis.place(dot.value());
    int free = 0;
    while (free <= MOST_TURNS && !isClear(x, free)) {
      free++;
    }
    // A full pile: the number of pieces beside the row still tells how many there are.
    int turn = free <= MOST_TURNS ? free : placed.size() % MOST_TURNS;
    placed.add(new Placed(dot, up(turn)));
    taken[turn] = Math.max(taken[turn], x + (dot.held() ? ARROW : 0));
  }

  private double up(int turn) {
    int step = (turn + 1) / 2;
    return step * (apart / 2) * (turn % 2 == 0 ? 1 : -1);
  }

  private boolean isClear(double x, int turn) {
    for (int other = 0; other <= MOST_TURNS; other++) {
      double gap = Math.max(0, x - taken[other]);
      double away = Math.abs(up(turn) - up(other));
      if (gap < apart && away < apart && Math.hypot(gap, away) < apart) {
        return false;
      }
    }
    return true;
  }
}
