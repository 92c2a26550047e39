package walebook.drawing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.quantity.Show;
import walebook.words.Words;
import walebook.working.Message;

/**
 * One setting's pieces as dots over its interval, small enough to stand in a row of a table; rows
 * with the same ends can be compared by eye. What lies far off all others stands at the end with
 * its figure ({@link OffScale}).
 *
 * @param from value at the left end
 * @param to value at the right end, above {@code from}
 * @param row dots with middle and interval
 * @param beside of which rows with these ends are: their figures take room at either end
 */
public record ValueBar(double from, double to, DotRow row, List<DotRow> beside) implements Drawing {
  private static final double DOT = 3;
  private static final double END = 12;

  /** A bar that has no other beside it. */
  public ValueBar(double from, double to, DotRow row) {
    this(from, to, row, List.of(row));
  }

  public ValueBar {
    beside = List.copyOf(beside);
    if (!(to > from && Double.isFinite(to - from))) {
      throw new IllegalArgumentException("the right end must lie above the left: " + from);
    }
  }

  /** Bars of all rows with the same ends, in the rows' order. */
  public static List<ValueBar> of(List<DotRow> rows) {
    return of(rows, DotSpan.of(rows));
  }

  /** The same with nought between the ends, for differences. */
  public static List<ValueBar> aroundNought(List<DotRow> rows) {
    return of(rows, DotSpan.of(rows, 0));
  }

  private static List<ValueBar> of(List<DotRow> rows, @Nullable DotSpan span) {
    Axis axis =
        span == null ? new Axis(0, 1, 0, 1) : Axis.around(span.least(), span.most(), 0, 1, 4);
    List<DotRow> off =
        rows.stream()
            .filter(row -> row.dots().stream().anyMatch(dot -> !OffScale.holds(axis, dot.value())))
            .toList();
    return rows.stream().map(row -> new ValueBar(axis.from(), axis.to(), row, off)).toList();
  }

  /** True when a piece of one of these lies too far off to be drawn to scale. */
  public static boolean isAnyOff(List<? extends Drawing> bars) {
    return bars.stream().anyMatch(each -> each instanceof ValueBar bar && bar.isOff());
  }

  private boolean isOff() {
    return row.dots().stream().anyMatch(dot -> dot.value() < from || dot.value() > to);
  }

  @Override
  public double leastWidth() {
    return 120;
  }

  @Override
  public double ownWidth() {
    return 220;
  }

  @Override
  public Picture at(double width, Words words) {
    double wide = takenWidth(width);
    Axis whole = new Axis(from, to, END, wide - END);
    List<OffScale> all = beside.stream().map(each -> off(each, whole, words)).toList();
    double right = wide - END - OffScale.roomAbove(all, 1);
    Axis axis = new Axis(from, to, END + OffScale.roomBelow(all, 1), right);
    double y = 13;
    Sketch sketch = new Sketch();
    sketch.line(axis.start(), y, axis.end(), y, Pen.solid(Role.LINE, 1));
    if (from < 0 && to > 0) {
      double nought = axis.place(0);
      sketch.line(nought, y - 12, nought, y + 12, Pen.solid(Role.SOFT, 1));
    }
    Double low = row.low();
    Double high = row.high();
    if (low != null && high != null) {
      double left = axis.place(low);
      sketch.round(left, y - 9, Math.max(2, axis.place(high) - left), 18, 4, Role.WASH);
    }
    for (DotRow.Dot each : row.dots()) {
      if (OffScale.holds(axis, each.value())) {
        double x = axis.place(each.value());
        DotMark.draw(sketch, x, y, DOT, row.series(), each.held(), Role.series(row.series()));
      }
    }
    off(row, axis, words).draw(sketch, axis, y, 1);
    Double middle = row.median();
    if (middle != null && OffScale.holds(axis, middle)) {
      double x = axis.place(middle);
      sketch.line(x, y - 11, x, y + 11, Pen.solid(Role.INK, 2.2));
    }
    return sketch.picture(wide, 26, says(middle, low, high));
  }

  /** The middle stands beside the bar as a number. */
  private static OffScale off(DotRow row, Axis axis, Words words) {
    return OffScale.of(DotRow.of(row.label(), row.dots()), axis, words);
  }

  private Message says(@Nullable Double middle, @Nullable Double low, @Nullable Double high) {
    return Message.of(
        "drawing.value.says",
        row.label(),
        Integer.toString(row.dots().size()),
        shown(middle),
        shown(low),
        shown(high));
  }

  private static String shown(@Nullable Double value) {
    return value == null ? "–" : Show.fixed(value, 1);
  }
}
