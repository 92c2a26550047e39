package walebook.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * Moves dots of one row up or down, never sideways, until none hides another or the pile is full.
 * In a full pile each place is taken once by one that gave and once by one that held: a dot on its
 * like would not be seen, and of a school's pieces there are very many.
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

  /** Where the last one stands, and which places those that gave and that held have taken there. */
  private double at = Double.NaN;

  private final BitSet gave = new BitSet();
  private final BitSet held = new BitSet();

  /** True when no place is free there any more. */
  private boolean full;

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
    if (x != at) {
      at = x;
      gave.clear();
      held.clear();
      full = false;
    }
    int free = full ? MOST_TURNS + 1 : 0;
    while (free <= MOST_TURNS && !isClear(x, free)) {
      free++;
    }
    full = free > MOST_TURNS;
    BitSet stand = dot.held() ? held : gave;
    // A full pile: the number of pieces beside the row still tells how many there are.
    int turn = full ? stand.nextClearBit(0) : free;
    if (turn > MOST_TURNS) {
      return;
    }
    stand.set(turn);
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
