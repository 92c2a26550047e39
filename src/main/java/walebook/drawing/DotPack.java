package walebook.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Moves dots of one row up or down, never sideways, until none hides another. */
final class DotPack {
  /** Room that the arrow of a held piece takes to its right. */
  private static final double ARROW = 6;

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
    for (int turn = 0; ; turn++) {
      int step = (turn + 1) / 2;
      double up = step * (apart / 2) * (turn % 2 == 0 ? 1 : -1);
      boolean clear = placed.stream().allMatch(other -> apart(dot, up, other, axis) >= apart);
      if (clear) {
        return up;
      }
    }
  }

  private static double apart(DotRow.Dot dot, double up, Placed other, Axis axis) {
    double along = axis.place(dot.value()) - axis.place(other.dot().value());
    double arrow = other.dot().held() ? ARROW : 0;
    return Math.hypot(Math.max(0, along - arrow), up - other.up());
  }
}
