package walebook.drawing;

import walebook.quantity.Show;
import walebook.words.Words;
import walebook.working.Message;

/**
 * A share of test pieces with its interval between 0 and 100 %.
 *
 * @param hits how many
 * @param of out of how many; nought draws an empty bar
 * @param lowPercent lower end of the interval
 * @param highPercent upper end of the interval
 */
public record IntervalBar(int hits, int of, double lowPercent, double highPercent)
    implements Drawing {
  private static final double LABEL_ROOM = 78;

  public IntervalBar {
    if (hits < 0 || of < hits) {
      throw new IllegalArgumentException("hits must be 0 to of: " + hits + " of " + of);
    }
    if (!(lowPercent >= 0 && lowPercent <= highPercent && highPercent <= 100)) {
      throw new IllegalArgumentException("interval must lie in 0 to 100, low before high");
    }
  }

  @Override
  public double leastWidth() {
    return 150;
  }

  @Override
  public double ownWidth() {
    return 200;
  }

  @Override
  public Picture at(double width, Words words) {
    double wide = takenWidth(width);
    Axis axis = new Axis(0, 100, 7, wide - LABEL_ROOM);
    double y = 12;
    Sketch sketch = new Sketch();
    sketch.line(axis.start(), y, axis.end(), y, Pen.solid(Role.LINE, 2));
    for (double tick : new double[] {0, 50, 100}) {
      sketch.line(axis.place(tick), y - 4, axis.place(tick), y + 4, Pen.solid(Role.LINE, 1.2));
    }
    if (of > 0) {
      double low = axis.place(lowPercent);
      sketch.round(low, y - 4, axis.place(highPercent) - low, 8, 4, Role.WASH);
      sketch.line(low, y, axis.place(highPercent), y, Pen.solid(Role.ACCENT, 1.6));
      sketch.disc(axis.place(100.0 * hits / of), y, 5, Role.ACCENT);
    }
    String label = words.say("drawing.interval.label", hits, of);
    sketch.text(axis.end() + 14, y + 4.5, label, Shape.Anchor.START, Role.INK);
    return sketch.picture(wide, 24, says());
  }

  private Message says() {
    if (of == 0) {
      return Message.of("drawing.interval.says-none");
    }
    return Message.of(
        "drawing.interval.says",
        Integer.toString(hits),
        Integer.toString(of),
        Show.fixed(100.0 * hits / of, 0),
        Show.fixed(lowPercent, 0),
        Show.fixed(highPercent, 0));
  }
}
