package walebook.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Moves dots of one row up or down, never sideways, until none hides another. */
final class DotPack {

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
    double x = axis.place(dot.value());
    double apart = 2 * radius + 0.8;
    for (int turn = 0; ; turn++) {
      int step = (turn + 1) / 2;
      double up = step * (apart / 2) * (turn % 2 == 0 ? 1 : -1);
      boolean clear =
          placed.stream()
              .allMatch(
                  other ->
                      Math.hypot(x - axis.place(other.dot().value()), up - other.up()) >= apart);
      if (clear) {
        return up;
      }
    }
  }
}
