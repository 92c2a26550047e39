package walebook.drawing;

import java.util.Objects;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.words.Words;
import walebook.working.Message;

/**
 * Body and garment as rings to scale, one inside the other: a whole line for the body, a broken one
 * for the garment as it lies.
 *
 * @param bodyMm girth of the body, over 0
 * @param garmentMm girth of the finished garment, over 0
 * @param unit the length unit its labels are shown in
 */
public record RingsPicture(double bodyMm, double garmentMm, Unit unit) implements Drawing {
  private static final double TALLEST = 190;
  private static final double LABELS = 52;

  public RingsPicture {
    Objects.requireNonNull(unit, "unit");
    if (!(bodyMm > 0 && garmentMm > 0 && Double.isFinite(bodyMm + garmentMm))) {
      throw new IllegalArgumentException("girths must be over 0: " + bodyMm + " " + garmentMm);
    }
    if (!unit.isLength()) {
      throw new IllegalArgumentException("unit must be a length: " + unit);
    }
  }

  @Override
  public double leastWidth() {
    return 200;
  }

  @Override
  public double ownWidth() {
    return 320;
  }

  @Override
  public Picture at(double width, Words words) {
    double wide = takenWidth(width);
    double across = Math.min(TALLEST, wide - 28);
    double perMm = across / 2 / Math.max(bodyMm, garmentMm);
    double body = bodyMm * perMm;
    double garment = garmentMm * perMm;
    double x = wide / 2;
    double y = 12 + across / 2;
    Sketch sketch = new Sketch();
    sketch.disc(x, y, body, Role.CLOTH);
    sketch.ring(x, y, body, Pen.solid(Role.INK, 2.4));
    sketch.ring(x, y, garment, Pen.dashed(Role.ACCENT, 2.4));
    double gap = Math.abs(body - garment);
    if (gap >= 1) {
      Arrow.draw(sketch, x, y - body, x, y - garment, Pen.solid(Role.ACCENT, 1.6));
    }
    double left = 14;
    double base = across + 34;
    sketch.line(left, base - 4, left + 26, base - 4, Pen.solid(Role.INK, 2.4));
    label(sketch, words.say("drawing.rings.body", Show.length(bodyMm, unit)), base, wide);
    sketch.line(left, base + 16, left + 26, base + 16, Pen.dashed(Role.ACCENT, 2.4));
    String garmentSays = words.say("drawing.rings.garment", Show.length(garmentMm, unit));
    label(sketch, garmentSays, base + 20, wide);
    return sketch.picture(wide, across + LABELS + 12, says());
  }

  private static void label(Sketch sketch, String says, double base, double wide) {
    String fits = TextWidth.fit(says, Sketch.LABEL, wide - 60);
    sketch.text(48, base, fits, Shape.Anchor.START, Role.INK);
  }

  private Message says() {
    String ease = Show.length(Math.abs(garmentMm - bodyMm), unit);
    String key = garmentMm < bodyMm ? "drawing.rings.says-smaller" : "drawing.rings.says-larger";
    return Message.of(key, Show.length(bodyMm, unit), Show.length(garmentMm, unit), ease);
  }
}
