package walebook.drawing;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.quantity.Show;
import walebook.words.Words;
import walebook.working.Message;

/**
 * One setting's pieces as dots over its interval, small enough to stand in a row of a table; rows
 * with the same ends can be compared by eye.
 *
 * @param from value at the left end
 * @param to value at the right end, above {@code from}
 * @param row dots with middle and interval
 */
public record ValueBar(double from, double to, DotRow row) implements Drawing {
  private static final double DOT = 3;
  private static final double END = 12;

  public ValueBar {
    if (!(to > from && Double.isFinite(to - from))) {
      throw new IllegalArgumentException("the right end must lie above the left: " + from);
    }
  }

  /** Bars of all rows with the same ends, in the rows' order. */
  public static List<ValueBar> of(List<DotRow> rows) {
    double[] all =
        rows.stream().flatMapToDouble(ValueBar::values).filter(Double::isFinite).sorted().toArray();
    double least = all.length == 0 ? 0 : all[0];
    double most = all.length == 0 ? 1 : all[all.length - 1];
    Axis axis = Axis.around(least, most, 0, 1, 4);
    return rows.stream().map(row -> new ValueBar(axis.from(), axis.to(), row)).toList();
  }

  /** The same with nought between the ends, for differences. */
  public static List<ValueBar> aroundNought(List<DotRow> rows) {
    List<DotRow> nought = new ArrayList<>(rows);
    nought.add(DotRow.of("", List.of(new DotRow.Dot(0, false))));
    return of(nought).subList(0, rows.size());
  }

  private static java.util.stream.DoubleStream values(DotRow row) {
    return java.util.stream.DoubleStream.concat(
        row.dots().stream().mapToDouble(DotRow.Dot::value),
        java.util.stream.Stream.of(maybe(row.median()), maybe(row.low()), maybe(row.high()))
            .mapToDouble(Double::doubleValue));
  }

  private static Double maybe(@Nullable Double value) {
    return value == null ? Double.NaN : value;
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
    Axis axis = new Axis(from, to, END, wide - END);
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
      double x = axis.place(each.value());
      DotMark.draw(sketch, x, y, DOT, row.series(), each.held(), Role.series(row.series()));
    }
    Double middle = row.median();
    if (middle != null) {
      double x = axis.place(middle);
      sketch.line(x, y - 11, x, y + 11, Pen.solid(Role.INK, 2.2));
    }
    return sketch.picture(wide, 26, says(middle, low, high));
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
