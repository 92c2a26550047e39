package walebook.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import walebook.quantity.Show;
import walebook.words.Words;
import walebook.working.Message;

/**
 * Points with the line through them and the band that the line may truly lie in. A point far off
 * all others stands beyond the edge ({@link OffPoint}).
 *
 * @param across what stands along the bottom, with its unit
 * @param up what stands upwards, with its unit
 * @param points measured
 * @param band from left to right; empty when there are too few points for one
 */
public record ScatterBand(String across, String up, List<Point> points, List<Edge> band)
    implements Drawing {
  private static final double LEFT = 52;
  private static final double TOP = 28;
  private static final double RIGHT = 14;
  private static final double FOOT = 10;

  /** One measured point. */
  public record Point(double x, double y) {}

  /** The band at one place. */
  public record Edge(double x, double low, double middle, double high) {}

  public ScatterBand {
    points = List.copyOf(points);
    band = List.copyOf(band);
  }

  @Override
  public double leastWidth() {
    return 300;
  }

  @Override
  public double ownWidth() {
    return 520;
  }

  @Override
  public Picture at(double width, Words words) {
    double wide = takenWidth(width);
    double tall = Math.min(340, wide * 0.62);
    Axis across = x(LEFT, wide - RIGHT);
    Axis upwards = y(1, 0);
    List<OffPoint> off =
        points.stream()
            .map(each -> OffPoint.of(each, across, upwards))
            .flatMap(Optional::stream)
            .toList();
    double right = OffPoint.room(off, false);
    Axis x = x(LEFT + OffPoint.room(off, true), wide - RIGHT - right);
    OffPoint.Lines above = OffPoint.above(off, x);
    OffPoint.Lines below = OffPoint.below(off, x);
    double top = TOP + above.tall();
    double bottom = top + tall;
    Axis y = y(bottom, top);
    Sketch sketch = new Sketch();
    sketch.text(0, 15, TextWidth.fit(up, Sketch.LABEL, wide), Shape.Anchor.START, Role.INK);
    double scale = bottom + below.tall();
    grid(sketch, x, y, scale);
    if (!band.isEmpty()) {
      band(sketch, x, y);
    }
    for (Point each : points) {
      if (OffScale.holds(x, each.x()) && OffScale.holds(y, each.y())) {
        DotMark.draw(sketch, x.place(each.x()), y.place(each.y()), 4, 0, false, Role.SERIES_1);
      }
    }
    above.draw(sketch, top, -1);
    below.draw(sketch, bottom, 1);
    OffPoint.beside(sketch, off, x, y);
    String name = TextWidth.fit(this.across, Sketch.LABEL, wide - LEFT);
    sketch.text(LEFT, scale + 36, name, Shape.Anchor.START, Role.INK);
    double end = scale + 36;
    if (!off.isEmpty()) {
      String note = words.say("drawing.off.note", off.size(), points.size());
      end = OffScale.note(sketch, note, end, wide);
    }
    return sketch.picture(wide, end + FOOT, says(off));
  }

  private Message says(List<OffPoint> off) {
    String many = Integer.toString(points.size());
    String far = String.join(", ", off.stream().map(OffPoint::figure).toList());
    return far.isEmpty()
        ? Message.of("drawing.scatter.says", up, across, many)
        : Message.of("drawing.scatter.says-off", up, across, many, far);
  }

  private static void grid(Sketch sketch, Axis x, Axis y, double scale) {
    double top = y.end();
    double bottom = y.start();
    for (double tick : x.ticks(5)) {
      sketch.line(x.place(tick), top, x.place(tick), bottom, Pen.solid(Role.LINE, 0.8));
      String says = Show.upTo(tick, 2);
      sketch.text(x.place(tick), scale + 17, says, Shape.Anchor.MIDDLE, Role.SOFT);
    }
    for (double tick : y.ticks(5)) {
      sketch.line(x.start(), y.place(tick), x.end(), y.place(tick), Pen.solid(Role.LINE, 0.8));
      String says = Show.upTo(tick, 2);
      sketch.text(LEFT - 6, y.place(tick) + 4, says, Shape.Anchor.END, Role.SOFT);
    }
  }

  /** What of the band and its line leaves the scale is cut off there. */
  private void band(Sketch sketch, Axis x, Axis y) {
    List<Edge> seen = band.stream().filter(each -> OffScale.holds(x, each.x())).toList();
    if (seen.isEmpty()) {
      return;
    }
    Edge first = seen.get(0);
    PathLine around = PathLine.from(x.place(first.x()), y.place(first.low()));
    for (Edge each : seen) {
      around = around.to(x.place(each.x()), y.place(each.low()));
    }
    for (int i = seen.size() - 1; i >= 0; i--) {
      around = around.to(x.place(seen.get(i).x()), y.place(seen.get(i).high()));
    }
    sketch.path(around.close(), Role.WASH, Pen.dashed(Role.ACCENT, 1));
    List<Edge> inside = seen.stream().filter(each -> OffScale.holds(y, each.middle())).toList();
    if (!inside.isEmpty()) {
      PathLine line = PathLine.from(x.place(inside.get(0).x()), y.place(inside.get(0).middle()));
      for (Edge each : inside) {
        line = line.to(x.place(each.x()), y.place(each.middle()));
      }
      sketch.path(line, null, Pen.solid(Role.INK, 2));
    }
  }

  private Axis x(double start, double end) {
    return axis(
        levels().entrySet().stream()
            .map(each -> same(each.getKey(), each.getValue().length))
            .toList(),
        List.of(),
        start,
        end);
  }

  private Axis y(double start, double end) {
    List<Double> ends = band.stream().flatMap(edge -> Stream.of(edge.low(), edge.high())).toList();
    return axis(levels().values(), ends, start, end);
  }

  /** Values upwards by the value across. */
  private Map<Double, double[]> levels() {
    Map<Double, List<Double>> levels = new TreeMap<>();
    points.forEach(each -> levels.computeIfAbsent(each.x(), at -> new ArrayList<>()).add(each.y()));
    Map<Double, double[]> all = new TreeMap<>();
    levels.forEach((x, ys) -> all.put(x, ys.stream().mapToDouble(Double::doubleValue).toArray()));
    return all;
  }

  private static double[] same(double value, int times) {
    double[] all = new double[times];
    Arrays.fill(all, value);
    return all;
  }

  private static Axis axis(Collection<double[]> rows, List<Double> ends, double start, double end) {
    if (rows.isEmpty()) {
      return Axis.around(0, 1, start, end, 5);
    }
    Reach reach = Reach.of(rows);
    double least = reach.least();
    double most = reach.most();
    for (double each : ends) {
      least = Math.min(least, reach.near(each));
      most = Math.max(most, reach.near(each));
    }
    return Axis.around(least, most, start, end, 5);
  }
}
