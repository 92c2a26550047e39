package walebook.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.words.Words;
import walebook.working.Message;

/**
 * A row of stitches to scale over a ruler.
 *
 * @param form which stitch
 * @param widthMm full swing, bite or distance of the needles in mm; nought for a straight stitch
 * @param lengthMm feed for each needle drop along the seam in mm
 */
public record StitchPicture(StitchForm form, double widthMm, double lengthMm) implements Drawing {
  private static final double SIDE = 14;
  private static final double TALLEST = 120;
  private static final int LEAST_STITCHES = 7;

  public StitchPicture {
    Objects.requireNonNull(form, "form");
    if (!(widthMm >= 0 && widthMm <= 50)) {
      throw new IllegalArgumentException("widthMm must be 0 to 50: " + widthMm);
    }
    if (!(lengthMm >= 0.1 && lengthMm <= 50)) {
      throw new IllegalArgumentException("lengthMm must be 0.1 to 50: " + lengthMm);
    }
  }

  @Override
  public double leastWidth() {
    return 180;
  }

  @Override
  public Picture at(double width, Words words) {
    double wide = takenWidth(width);
    double swing = form == StitchForm.STRAIGHT ? 0 : widthMm;
    Axis axis = new Axis(0, spanMm(wide, swing), SIDE, wide - SIDE);
    double tall = swing * axis.perUnit();
    double top = 40;
    double cloth = tall + 28;
    Sketch sketch = new Sketch();
    sketch.text(SIDE, 15, label(words), Shape.Anchor.START, Role.INK);
    sketch.round(SIDE - 6, top - 14, wide - 2 * SIDE + 12, cloth, 4, Role.CLOTH);
    StitchRow row = new StitchRow(axis, lengthMm, top, tall);
    switch (form) {
      case STRAIGHT -> row.straight(sketch);
      case ZIGZAG -> row.zigzag(sketch, 1);
      case THREE_STEP_ZIGZAG -> row.zigzag(sketch, 3);
      case OVERLOCK -> row.overlock(sketch);
      case COVERSTITCH -> row.cover(sketch);
    }
    double rule = top - 14 + cloth + 10;
    Rule.draw(sketch, axis, rule, Unit.MM);
    String key = "drawing.stitch.says";
    Message says =
        Message.of(key, words.say(form.key()), Show.upTo(widthMm, 2), Show.upTo(lengthMm, 2));
    return sketch.picture(wide, rule + 30, says);
  }

  private double spanMm(double wide, double swing) {
    double forStitches = lengthMm * LEAST_STITCHES * (form == StitchForm.THREE_STEP_ZIGZAG ? 2 : 1);
    double forHeight = swing * (wide - 2 * SIDE) / TALLEST;
    return Math.max(10, Math.max(forStitches, forHeight));
  }

  private String label(Words words) {
    List<String> args = new ArrayList<>();
    args.add(words.say(form.key()));
    args.add(Show.upTo(widthMm, 2));
    args.add(Show.upTo(lengthMm, 2));
    boolean plain = form == StitchForm.STRAIGHT;
    return words.say(
        plain ? "drawing.stitch.label-length" : "drawing.stitch.label", args.toArray());
  }
}
