package walebook.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.words.Words;
import walebook.working.Message;

/**
 * A cloth gauge to scale: the same piece before, stretched and released, its marks under each
 * other, growth shaded.
 *
 * @param reading what is known so far
 * @param unit the length unit its labels are shown in
 */
public record GaugePicture(GaugeReading reading, Unit unit) implements Drawing {
  private static final double SIDE = 14;
  private static final double STRIP = 26;
  private static final double ROW = STRIP + 28;
  private static final double EDGE_ROW = 34;
  private static final double RULE = 34;

  public GaugePicture {
    Objects.requireNonNull(reading, "reading");
    if (!unit.isLength()) {
      throw new IllegalArgumentException("unit must be a length: " + unit);
    }
  }

  @Override
  public double leastWidth() {
    return 220;
  }

  @Override
  public Picture at(double width, Words words) {
    double wide = takenWidth(width);
    Axis axis = axis(wide);
    Sketch sketch = new Sketch();
    double top = 22;
    Double start = reading.start();
    strip(sketch, axis, top, start, words.say("drawing.gauge.start"), words);
    double afterStart = top + ROW;
    strip(sketch, axis, afterStart, reading.stretched(), words.say(reading.how().key()), words);
    Double stretched = reading.stretched();
    if (stretched != null && reading.how() == GaugeReading.How.HELD) {
      arrow(sketch, axis.place(stretched), afterStart + STRIP / 2);
    }
    double afterStretch = afterStart + ROW;
    strip(sketch, axis, afterStretch, reading.released(), words.say("drawing.gauge.back"), words);
    Double released = reading.released();
    if (start != null && released != null && released > start) {
      growth(sketch, axis, afterStretch, start, released, words);
    }
    double y = afterStretch + ROW;
    y = edge(sketch, axis, y, reading.edgeBefore(), words.say("drawing.gauge.edge-before"));
    y = edge(sketch, axis, y, reading.edgeAfter(), words.say("drawing.gauge.edge-after"));
    if (start != null) {
      double x = axis.place(start);
      sketch.line(x, top - 4, x, afterStretch + STRIP + 6, Pen.dashed(Role.ACCENT, 1));
    }
    Rule.draw(sketch, axis, y - 6, unit);
    return sketch.picture(wide, y + RULE - 6, says());
  }

  private Axis axis(double wide) {
    double most =
        Stream.of(
                reading.start(),
                reading.stretched(),
                reading.released(),
                reading.edgeBefore(),
                reading.edgeAfter())
            .filter(Objects::nonNull)
            .mapToDouble(Double::doubleValue)
            .max()
            .orElse(100);
    double room = reading.how() == GaugeReading.How.HELD ? 1.12 : 1.05;
    return new Axis(0, most * room, SIDE, wide - SIDE);
  }

  private void strip(
      Sketch sketch, Axis axis, double y, @Nullable Double mm, String label, Words words) {
    double left = axis.place(0);
    if (mm == null) {
      double ghost = Math.max(60, (axis.end() - left) * 0.3);
      Shape.Rect gap = new Shape.Rect(left, y, ghost, STRIP, 3, null, Pen.dashed(Role.LINE, 1.2));
      sketch.add(gap);
      sketch.text(
          left,
          y - 7,
          label + ": " + words.say("drawing.gauge.none"),
          Shape.Anchor.START,
          Role.SOFT);
      return;
    }
    double right = axis.place(mm);
    sketch.round(left, y, right - left, STRIP, 3, Role.CLOTH);
    wales(sketch, left, right, y);
    for (double x : new double[] {left, right}) {
      sketch.line(x, y - 3, x, y + STRIP + 3, Pen.solid(Role.INK, 2.2));
    }
    String says = label + " " + Show.length(mm, unit);
    double room = axis.end() - left;
    sketch.text(left, y - 7, TextWidth.fit(says, Sketch.LABEL, room), Shape.Anchor.START, Role.INK);
  }

  private static void wales(Sketch sketch, double left, double right, double y) {
    int columns = 18;
    double step = (right - left) / columns;
    PathLine stitches = PathLine.from(left + step / 2, y + 3);
    for (int i = 0; i < columns; i++) {
      double x = left + step * (i + 0.5);
      for (int row = 0; row < 3; row++) {
        double at = y + 4 + row * 7;
        stitches.lift(x - step * 0.3, at).to(x, at + 4.5).to(x + step * 0.3, at);
      }
    }
    sketch.path(stitches, null, Pen.solid(Role.LINE, 1.1));
  }

  private void growth(
      Sketch sketch, Axis axis, double y, double start, double released, Words words) {
    double from = axis.place(start);
    double to = axis.place(released);
    sketch.rect(from, y, to - from, STRIP, Role.WASH, null);
    PathLine hatch = PathLine.from(from, y);
    for (double x = from + 2; x < to; x += 5) {
      hatch.lift(x, y + STRIP).to(Math.min(to, x + 5), y);
    }
    sketch.path(hatch, null, Pen.solid(Role.ACCENT, 1));
    sketch.line(to, y - 3, to, y + STRIP + 3, Pen.solid(Role.INK, 2.2));
    String says = words.say("drawing.gauge.growth", Show.length(released - start, unit));
    double wide = TextWidth.of(says, Sketch.LABEL);
    boolean fits = to + 6 + wide < axis.end() + SIDE;
    sketch.text(
        fits ? to + 6 : from - 6,
        y + STRIP / 2 + 4.5,
        says,
        fits ? Shape.Anchor.START : Shape.Anchor.END,
        Role.ACCENT);
  }

  private double edge(Sketch sketch, Axis axis, double y, @Nullable Double mm, String label) {
    if (mm == null) {
      return y;
    }
    double left = axis.place(0);
    double right = axis.place(mm);
    sketch.text(left, y - 7, label + " " + Show.length(mm, unit), Shape.Anchor.START, Role.INK);
    sketch.line(left, y + 4, right, y + 4, Pen.solid(Role.SOFT, 2));
    sketch.line(left, y, left, y + 8, Pen.solid(Role.SOFT, 2));
    sketch.line(right, y, right, y + 8, Pen.solid(Role.SOFT, 2));
    return y + EDGE_ROW;
  }

  private static void arrow(Sketch sketch, double x, double y) {
    sketch.line(x + 5, y, x + 18, y, Pen.solid(Role.INK, 1.8));
    PathLine head = PathLine.from(x + 13, y - 4).to(x + 18, y).to(x + 13, y + 4);
    sketch.path(head, null, Pen.solid(Role.INK, 1.8));
  }

  private Message says() {
    List<String> args = new ArrayList<>();
    Double[] lengths = {reading.start(), reading.stretched(), reading.released()};
    for (Double mm : lengths) {
      args.add(mm == null ? "–" : Show.length(mm, unit));
    }
    String key =
        switch (reading.how()) {
          case STRETCHED -> "drawing.gauge.says-stretched";
          case GAVE -> "drawing.gauge.says-gave";
          case HELD -> "drawing.gauge.says-held";
        };
    return new Message(key, args);
  }
}
