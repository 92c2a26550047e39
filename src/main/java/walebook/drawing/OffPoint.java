package walebook.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import walebook.quantity.Show;

/**
 * A point beyond the edges of a plot: a double arrow with the figure that lies too far off.
 *
 * @param point where it truly lies
 * @param across −1 beyond the left edge, 1 beyond the right one, else 0
 * @param up −1 below, 1 above, else 0
 */
record OffPoint(ScatterBand.Point point, int across, int up) {
  private static final double ARROW = 14;
  private static final double GAP = 6;

  /** A point where the axes don't hold it. */
  static Optional<OffPoint> of(ScatterBand.Point point, Axis x, Axis y) {
    int across = side(x, point.x());
    int up = side(y, point.y());
    return across == 0 && up == 0 ? Optional.empty() : Optional.of(new OffPoint(point, across, up));
  }

  private static int side(Axis axis, double value) {
    return OffScale.holds(axis, value) ? 0 : value < axis.from() ? -1 : 1;
  }

  /** The value that is off; both, parted by a slash, where both are. */
  String figure() {
    String x = Show.upTo(point.x(), 2);
    String y = Show.upTo(point.y(), 1);
    return across == 0 ? y : up == 0 ? x : x + " / " + y;
  }

  private double wide() {
    return ARROW + TextWidth.of(figure(), Sketch.LABEL);
  }

  /** Room for those beyond the left or the right edge. */
  static double room(List<OffPoint> all, boolean left) {
    return all.stream()
        .filter(each -> each.across == (left ? -1 : 1))
        .mapToDouble(each -> each.wide() + GAP)
        .max()
        .orElse(0);
  }

  /** Those beyond the left and right edges, each as high as it lies. */
  static void beside(Sketch sketch, List<OffPoint> all, Axis x, Axis y) {
    List<OffPoint> some =
        all.stream()
            .filter(each -> each.across != 0)
            .sorted(Comparator.comparingDouble(each -> y.place(each.point.y())))
            .toList();
    double left = Double.NEGATIVE_INFINITY;
    double right = Double.NEGATIVE_INFINITY;
    for (OffPoint each : some) {
      boolean before = each.across < 0;
      double at = Math.max(y.place(each.point.y()), (before ? left : right) + OffScale.LINE);
      double begin = before ? x.start() - GAP : x.end() + GAP;
      OffScale.arrow(sketch, begin, at, each.across, 0);
      Shape.Anchor anchor = before ? Shape.Anchor.END : Shape.Anchor.START;
      sketch.text(begin + each.across * ARROW, at + 4.5, each.figure(), anchor, Role.INK);
      left = before ? at : left;
      right = before ? right : at;
    }
  }

  /** Figures in as few lines as they take without running into each other. */
  record Lines(List<Placed> placed, int lines) {
    double tall() {
      return lines == 0 ? 0 : lines * OffScale.LINE + GAP;
    }

    /**
     * Draws them beyond an edge.
     *
     * @param way −1 for upwards
     */
    void draw(Sketch sketch, double edge, int way) {
      for (Placed each : placed) {
        double y = edge + way * (GAP + (each.line() + 0.5) * OffScale.LINE);
        OffScale.arrow(sketch, each.x(), y - way * 5, 0, way);
        boolean left = each.left();
        Shape.Anchor anchor = left ? Shape.Anchor.END : Shape.Anchor.START;
        sketch.text(each.x() + (left ? -8 : 8), y + 4.5, each.figure(), anchor, Role.INK);
      }
    }
  }

  /** A figure on a line, at the right or left of its arrow. */
  private record Placed(double x, boolean left, int line, String figure) {}

  static Lines above(List<OffPoint> all, Axis x) {
    return lines(all, x, 1);
  }

  static Lines below(List<OffPoint> all, Axis x) {
    return lines(all, x, -1);
  }

  private static Lines lines(List<OffPoint> all, Axis x, int up) {
    List<Double> ends = new ArrayList<>();
    List<Placed> placed = new ArrayList<>();
    all.stream()
        .filter(each -> each.across == 0 && each.up == up)
        .sorted(Comparator.comparingDouble(each -> each.point.x()))
        .forEach(
            each -> {
              double at = x.place(each.point.x());
              boolean left = at + each.wide() > x.end();
              double begin = left ? at - each.wide() : at - GAP;
              double end = left ? at + GAP : at + each.wide();
              int line = 0;
              while (line < ends.size() && ends.get(line) > begin) {
                line++;
              }
              if (line == ends.size()) {
                ends.add(end);
              } else {
                ends.set(line, end);
              }
              placed.add(new Placed(at, left, line, each.figure()));
            });
    return new Lines(placed, ends.size());
  }
}
