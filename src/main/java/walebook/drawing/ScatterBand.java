package walebook.drawing;

import java.util.List;
import java.util.stream.Stream;
import walebook.quantity.Show;
import walebook.words.Words;
import walebook.working.Message;

/**
 * Points with the line through them and the band that the line may truly lie in.
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
  private static final double FOOT = 46;

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
    Axis x = axis(points.stream().map(Point::x).toList(), LEFT, wide - 14);
    List<Double> heights =
        Stream.concat(
                points.stream().map(Point::y),
                band.stream().flatMap(edge -> Stream.of(edge.low(), edge.high())))
            .toList();
    Axis y = axis(heights, TOP + tall, TOP);
    Sketch sketch = new Sketch();
    sketch.text(0, 15, TextWidth.fit(up, Sketch.LABEL, wide), Shape.Anchor.START, Role.INK);
    for (double tick : x.ticks(5)) {
      sketch.line(x.place(tick), TOP, x.place(tick), TOP + tall, Pen.solid(Role.LINE, 0.8));
      String says = Show.upTo(tick, 2);
      sketch.text(x.place(tick), TOP + tall + 17, says, Shape.Anchor.MIDDLE, Role.SOFT);
    }
    for (double tick : y.ticks(5)) {
      sketch.line(LEFT, y.place(tick), wide - 14, y.place(tick), Pen.solid(Role.LINE, 0.8));
      String says = Show.upTo(tick, 2);
      sketch.text(LEFT - 6, y.place(tick) + 4, says, Shape.Anchor.END, Role.SOFT);
    }
    if (!band.isEmpty()) {
      band(sketch, x, y);
    }
    for (Point each : points) {
      DotMark.draw(sketch, x.place(each.x()), y.place(each.y()), 4, 0, false, Role.SERIES_1);
    }
    String name = TextWidth.fit(across, Sketch.LABEL, wide - LEFT);
    sketch.text(LEFT, TOP + tall + 36, name, Shape.Anchor.START, Role.INK);
    return sketch.picture(
        wide,
        TOP + tall + FOOT,
        Message.of("drawing.scatter.says", up, across, Integer.toString(points.size())));
  }

  private void band(Sketch sketch, Axis x, Axis y) {
    Edge first = band.get(0);
    PathLine around = PathLine.from(x.place(first.x()), y.place(first.low()));
    PathLine line = PathLine.from(x.place(first.x()), y.place(first.middle()));
    for (Edge each : band) {
      around = around.to(x.place(each.x()), y.place(each.low()));
      line = line.to(x.place(each.x()), y.place(each.middle()));
    }
    for (int i = band.size() - 1; i >= 0; i--) {
      around = around.to(x.place(band.get(i).x()), y.place(band.get(i).high()));
    }
    sketch.path(around.close(), Role.WASH, Pen.dashed(Role.ACCENT, 1));
    sketch.path(line, null, Pen.solid(Role.INK, 2));
  }

  private static Axis axis(List<Double> values, double start, double end) {
    double least = values.stream().mapToDouble(Double::doubleValue).min().orElse(0);
    double most = values.stream().mapToDouble(Double::doubleValue).max().orElse(1);
    return Axis.around(least, most, start, end, 5);
  }
}
