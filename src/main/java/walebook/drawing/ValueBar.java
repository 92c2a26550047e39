package walebook.drawing;

import org.jspecify.annotations.Nullable;
import walebook.quantity.Show;
import walebook.words.Words;
import walebook.working.Message;

/**
 * A value with its interval on a scale that other rows of a table share.
 *
 * @param value null when not known: then only the scale is drawn
 * @param low lower end of the interval; null when there is none
 * @param high upper end of the interval; null when there is none
 * @param from the scale's lower end, in the value's unit
 * @param to the scale's upper end
 * @param zero where a mark stands on the scale, such as no bias; null for none
 */
public record ValueBar(
    @Nullable Double value,
    @Nullable Double low,
    @Nullable Double high,
    double from,
    double to,
    @Nullable Double zero)
    implements Drawing {
  private static final double EDGE = 7;

  public ValueBar {
    if (!(from < to)) {
      throw new IllegalArgumentException("from must lie below to: " + from + ", " + to);
    }
    if ((low == null) != (high == null) || (low != null && high != null && low > high)) {
      throw new IllegalArgumentException("low and high go together, low first");
    }
  }

  @Override
  public double leastWidth() {
    return 110;
  }

  @Override
  public double ownWidth() {
    return 180;
  }

  @Override
  public Picture at(double width, Words words) {
    double wide = takenWidth(width);
    Axis axis = new Axis(from, to, EDGE, wide - EDGE);
    double y = 12;
    Sketch sketch = new Sketch();
    sketch.line(axis.start(), y, axis.end(), y, Pen.solid(Role.LINE, 2));
    if (zero != null && zero >= from && zero <= to) {
      double x = axis.place(zero);
      sketch.line(x, y - 9, x, y + 9, Pen.solid(Role.INK, 1.2));
    }
    if (low != null && high != null) {
      double start = axis.place(Math.max(from, low));
      double end = axis.place(Math.min(to, high));
      sketch.round(start, y - 4, Math.max(1, end - start), 8, 4, Role.WASH);
      sketch.line(start, y, Math.max(start + 1, end), y, Pen.solid(Role.ACCENT, 1.6));
    }
    if (value != null) {
      sketch.disc(axis.place(Math.max(from, Math.min(to, value))), y, 5, Role.ACCENT);
    }
    return sketch.picture(wide, 24, says());
  }

  private Message says() {
    if (value == null) {
      return Message.of("drawing.value.says-none");
    }
    String shown = Show.fixed(value, 1);
    return low == null || high == null
        ? Message.of("drawing.value.says-bare", shown)
        : Message.of("drawing.value.says", shown, Show.fixed(low, 1), Show.fixed(high, 1));
  }
}
