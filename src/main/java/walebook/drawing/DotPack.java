package walebook.drawing;

import java.util.ArrayList;
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

  private DotPack() {}

  static List<Placed> of(List<DotRow.Dot> dots, Axis axis, double radius) {
    List<Placed> placed = new ArrayList<>();
    dots.stream()
        .sorted(Comparator.comparingDouble(DotRow.Dot::value))
        .forEach(dot -> placed.add(new Placed(dot, free(dot, placed, axis, radius))));
    return placed;
  }

  private static double free(DotRow.Dot dot, List<Placed> placed, Axis axis, double radius) {
    double apart = 2 * radius + 0.8;
    for (int turn = 0; turn <= MOST_TURNS; turn++) {
      double up = up(turn, apart);
      if (clear(dot, up, placed, axis, apart)) {
        return up;
      }
    }
    // A full pile: the number of pieces beside the row still tells how many there are.
    return up(placed.size() % MOST_TURNS, apart);
  }

  private static double up(int turn, double apart) {
    int step = (turn + 1) / 2;
    return step * (apart / 2) * (turn % 2 == 0 ? 1 : -1);
  }

  private static boolean clear(
      DotRow.Dot dot, double up, List<Placed> placed, Axis axis, double apart) {
    double x = axis.place(dot.value());
    for (int i = placed.size() - 1; i >= 0; i--) {
      Placed other = placed.get(i);
      double along = x - axis.place(other.dot().value());
      if (along - ARROW >= apart) {
        return true;
      }
      double gap = Math.max(0, along - (other.dot().held() ? ARROW : 0));
      if (Math.hypot(gap, up - other.up()) < apart) {
        return false;
      }
    }
    return true;
  }
}
