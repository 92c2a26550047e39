package walebook.drawing;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import walebook.garment.ClothStretch;
import walebook.garment.GrainRound;
import walebook.garment.GrainStretch;
import walebook.quantity.Show;
import walebook.words.Words;
import walebook.working.Message;

/**
 * A pattern piece as it lies on the cloth: wales drawn in, the grain line along them, and an arrow
 * for each stretch as long as the cloth stretches.
 *
 * @param cloth its stretch both ways; null where not measured
 * @param round which direction goes round the body
 */
public record PatternPiecePicture(ClothStretch cloth, GrainRound round) implements Drawing {
  private static final double PIECE_WIDE = 120;
  private static final double PIECE_TALL = 156;
  private static final double LONGEST = 84;

  @Override
  public double leastWidth() {
    return 280;
  }

  @Override
  public double ownWidth() {
    return 360;
  }

  @Override
  public Picture at(double width, Words words) {
    double wide = takenWidth(width);
    double tall = PIECE_TALL + 110;
    double left = wide / 2 - PIECE_WIDE / 2 - 20;
    double top = 22;
    Sketch sketch = new Sketch();
    sketch.round(6, 6, wide - 12, PIECE_TALL + 34, 6, Role.CLOTH);
    wales(sketch, wide);
    piece(sketch, left, top);
    double middle = left + PIECE_WIDE / 2;
    double centre = top + PIECE_TALL * 0.55;
    boolean upright = round == GrainRound.COURSE;
    Pen grain = Pen.solid(Role.INK, 2);
    if (upright) {
      Arrow.both(sketch, left + 103, top + 72, left + 103, top + PIECE_TALL - 10, grain);
    } else {
      Arrow.both(sketch, left + 10, top + 142, left + 106, top + 142, grain);
    }
    GrainStretch across = cloth.of(round);
    GrainStretch along = cloth.of(round.other());
    double most = Math.max(1, Math.max(percent(across), percent(along)));
    Pen pen = Pen.solid(Role.ACCENT, 3);
    double half = LONGEST / 2 * percent(across) / most;
    Arrow.both(sketch, middle - 12 - half, centre, middle - 12 + half, centre, pen);
    double high = LONGEST / 2 * percent(along) / most;
    Arrow.both(sketch, middle - 12, centre - high, middle - 12, centre + high, pen);
    double base = PIECE_TALL + 60;
    line(sketch, words.say("drawing.piece.round", words.say(round.sayKey()), show(across)), base);
    line(sketch, words.say("drawing.piece.along", show(along)), base + 18);
    line(sketch, words.say("drawing.piece.key"), base + 36);
    return sketch.picture(wide, tall, says(words, across, along));
  }

  /** Wales run along the grain line: upright when the courses go round. */
  private void wales(Sketch sketch, double wide) {
    Pen pen = Pen.solid(Role.LINE, 1);
    double bottom = PIECE_TALL + 40;
    if (round == GrainRound.COURSE) {
      for (double x = 14; x < wide - 8; x += 9) {
        sketch.line(x, 8, x, bottom - 2, pen);
      }
    } else {
      for (double y = 14; y < bottom - 4; y += 9) {
        sketch.line(8, y, wide - 8, y, pen);
      }
    }
  }

  /** Half a front on the fold at its left: neck, shoulder, armhole, side and hem. */
  private static void piece(Sketch sketch, double x, double y) {
    double w = PIECE_WIDE;
    double h = PIECE_TALL;
    PathLine line =
        PathLine.from(x, y + h * 0.16)
            .curve(x + w * 0.2, y + h * 0.16, x + w * 0.3, y + h * 0.1, x + w * 0.32, y)
            .to(x + w * 0.78, y + h * 0.07)
            .curve(x + w * 0.7, y + h * 0.2, x + w * 0.75, y + h * 0.36, x + w, y + h * 0.38)
            .to(x + w * 0.96, y + h)
            .to(x, y + h)
            .close();
    sketch.path(line, Role.CARD, Pen.solid(Role.INK, 1.8));
  }

  private static void line(Sketch sketch, String says, double base) {
    sketch.text(14, base, says, Shape.Anchor.START, Role.INK);
  }

  private static double percent(@Nullable GrainStretch stretch) {
    return stretch == null ? 0 : stretch.percent();
  }

  private static String show(@Nullable GrainStretch stretch) {
    return stretch == null ? "?" : Show.percent(stretch.percent());
  }

  private Message says(Words words, @Nullable GrainStretch across, @Nullable GrainStretch along) {
    String key =
        percent(across) >= percent(along) ? "drawing.piece.says-well" : "drawing.piece.says-turned";
    String grain = words.say(round.sayKey()).toLowerCase(Locale.ROOT);
    return Message.of(key, grain, show(across), show(along));
  }
}
