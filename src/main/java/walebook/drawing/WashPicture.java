package walebook.drawing;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.words.Words;
import walebook.working.Message;

/**
 * A marked square to scale, before a wash as a broken line and after it as cloth; the wales run
 * from top to bottom. Lengths are in mm, null where not read: a way that was not read is drawn as
 * it was before, or as long as the other one.
 *
 * @param unit the length unit its labels are shown in
 */
public record WashPicture(
    @Nullable Double waleBefore,
    @Nullable Double waleAfter,
    @Nullable Double courseBefore,
    @Nullable Double courseAfter,
    Unit unit)
    implements Drawing {
  private static final double MARGIN = 14;
  private static final double TOP = 26;
  private static final double FOOT = 30;
  private static final double TALLEST = 180;
  private static final double BETWEEN_WALES = 12;

  public WashPicture {
    for (Double each : Arrays.asList(waleBefore, waleAfter, courseBefore, courseAfter)) {
      if (each != null && !(each > 0 && Double.isFinite(each))) {
        throw new IllegalArgumentException("lengths must be above 0: " + each);
      }
    }
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
    double tallBefore = first(waleBefore, courseBefore, waleAfter, courseAfter);
    double broadBefore = first(courseBefore, waleBefore, courseAfter, waleAfter);
    double tallAfter = first(waleAfter, tallBefore);
    double broadAfter = first(courseAfter, broadBefore);
    double perMm =
        Math.min(
            (wide - 2 * MARGIN) / Math.max(broadBefore, broadAfter),
            TALLEST / Math.max(tallBefore, tallAfter));
    Sketch sketch = new Sketch();
    if (waleAfter != null || courseAfter != null) {
      cloth(sketch, broadAfter * perMm, tallAfter * perMm);
    }
    sketch.rect(
        MARGIN, TOP, broadBefore * perMm, tallBefore * perMm, null, Pen.dashed(Role.INK, 1.6));
    double below = TOP + Math.max(tallBefore, tallAfter) * perMm;
    String course = words.say("drawing.wash.course", length(courseBefore), length(courseAfter));
    String wale = words.say("drawing.wash.wale", length(waleBefore), length(waleAfter));
    label(sketch, wide, TOP - 9, course);
    label(sketch, wide, below + 19, wale);
    return sketch.picture(
        wide,
        below + FOOT,
        new Message(
            "drawing.wash.says",
            List.of(
                length(waleBefore), length(waleAfter), length(courseBefore), length(courseAfter))));
  }

  private static void cloth(Sketch sketch, double broad, double tall) {
    sketch.rect(MARGIN, TOP, broad, tall, Role.CLOTH, Pen.solid(Role.INK, 2.2));
    PathLine wales = PathLine.from(MARGIN, TOP);
    for (double x = BETWEEN_WALES; x < broad; x += BETWEEN_WALES) {
      wales.lift(MARGIN + x, TOP + 2).to(MARGIN + x, TOP + tall - 2);
    }
    sketch.path(wales, null, Pen.solid(Role.LINE, 1.1));
  }

  private static void label(Sketch sketch, double wide, double y, String says) {
    String fits = TextWidth.fit(says, Sketch.LABEL, wide - 2 * MARGIN);
    sketch.text(MARGIN, y, fits, Shape.Anchor.START, Role.INK);
  }

  private String length(@Nullable Double mm) {
    return mm == null ? "–" : Show.length(mm, unit);
  }

  private static double first(@Nullable Double... lengths) {
    return Arrays.stream(lengths).filter(Objects::nonNull).findFirst().orElse(500.0);
  }
}
