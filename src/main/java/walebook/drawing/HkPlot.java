package walebook.drawing;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import walebook.quantity.Show;
import walebook.words.Words;
import walebook.working.Message;

/**
 * Those who measured, one under the other: at the left how far each reads off the room (h), at the
 * right how much their own readings scatter against the room's (k); broken lines are where chance
 * ends. What lies beyond has a square and its number in bold (ASTM E691 draws bars by laboratory
 * for the same).
 *
 * @param rows one for each person
 * @param criticalH null when it can't be told
 */
public record HkPlot(List<Row> rows, @Nullable Double criticalH) implements Drawing {
  private static final double ROW = 30;
  private static final double HEAD = 52;
  private static final double DOT = 4.4;

  /**
   * One person.
   *
   * @param h null when it can't be told
   * @param k null when read once only
   * @param criticalK null as k; differs with how often each read
   */
  public record Row(
      String name, @Nullable Double h, @Nullable Double k, @Nullable Double criticalK) {}

  public HkPlot {
    rows = List.copyOf(rows);
  }

  @Override
  public double leastWidth() {
    return 420;
  }

  @Override
  public double ownWidth() {
    return 640;
  }

  @Override
  public Picture at(double width, Words words) {
    double wide = takenWidth(width);
    double longest =
        rows.stream().mapToDouble(r -> TextWidth.of(r.name(), Sketch.LABEL)).max().orElse(0);
    double labels = Math.min(longest + 6, wide * 0.3);
    double panel = (wide - labels) / 2;
    double bottom = HEAD + ROW * rows.size();
    double mostH = most(rows.stream().map(Row::h).toList(), criticalH, 1);
    double mostK = 1;
    for (Row row : rows) {
      mostK = Math.max(mostK, most(java.util.Arrays.asList(row.k()), row.criticalK(), 1));
    }
    Axis h = new Axis(-mostH * 1.1, mostH * 1.1, labels + 18, labels + panel - 40);
    Axis k = new Axis(0, mostK * 1.1, labels + panel + 18, wide - 40);
    Sketch sketch = new Sketch();
    head(sketch, h, words.say("drawing.hk.h"), bottom, panel);
    head(sketch, k, words.say("drawing.hk.k"), bottom, panel);
    Double critical = criticalH;
    if (critical != null) {
      for (double at : new double[] {-critical, critical}) {
        sketch.line(h.place(at), HEAD - 6, h.place(at), bottom, Pen.dashed(Role.NOT_MET, 1.4));
        String says = Show.fixed(at, 2);
        sketch.text(h.place(at), HEAD - 12, says, Shape.Anchor.MIDDLE, Role.NOT_MET);
      }
    }
    List<Double> limits =
        rows.stream().map(Row::criticalK).filter(Objects::nonNull).distinct().toList();
    if (limits.size() == 1) {
      double x = k.place(limits.get(0));
      String says = Show.fixed(limits.get(0), 2);
      sketch.text(x, HEAD - 12, says, Shape.Anchor.MIDDLE, Role.NOT_MET);
    }
    for (int i = 0; i < rows.size(); i++) {
      Row row = rows.get(i);
      double y = HEAD + (i + 0.5) * ROW;
      String name = TextWidth.fit(row.name(), Sketch.LABEL, labels - 6);
      sketch.text(0, y + 4.5, name, Shape.Anchor.START, Role.INK);
      mark(sketch, h, row.h(), criticalH, y);
      Double own = row.criticalK();
      if (own != null) {
        double x = k.place(own);
        sketch.line(x, y - ROW / 2, x, y + ROW / 2, Pen.dashed(Role.NOT_MET, 1.4));
      }
      mark(sketch, k, row.k(), own, y);
    }
    return sketch.picture(wide, bottom + 6, says());
  }

  private static void head(Sketch sketch, Axis axis, String title, double bottom, double panel) {
    double zero = axis.place(0);
    String shown = TextWidth.fit(title, Sketch.LABEL, panel - 20);
    sketch.text(axis.start(), 15, shown, Shape.Anchor.START, Role.INK);
    sketch.line(zero, HEAD - 6, zero, bottom, Pen.solid(Role.SOFT, 1));
    sketch.text(zero, HEAD - 12, "0", Shape.Anchor.MIDDLE, Role.SOFT);
  }

  private static void mark(
      Sketch sketch, Axis axis, @Nullable Double value, @Nullable Double critical, double y) {
    if (value == null) {
      sketch.text(axis.place(0) + 8, y + 4.5, "–", Shape.Anchor.START, Role.SOFT);
      return;
    }
    boolean odd = critical != null && Math.abs(value) > critical;
    double x = axis.place(value);
    sketch.line(axis.place(0), y, x, y, Pen.solid(Role.INK, 2.2));
    Role role = odd ? Role.NOT_MET : Role.ACCENT;
    DotMark.draw(sketch, x, y, odd ? DOT + 1 : DOT, odd ? 1 : 0, false, role);
    Shape.Anchor anchor = value < 0 ? Shape.Anchor.END : Shape.Anchor.START;
    String says = Show.fixed(value, 2);
    double at = x + (value < 0 ? -8 : 8);
    if (critical != null && !odd) {
      at = clear(at, TextWidth.of(says, Sketch.LABEL), axis, value < 0 ? -critical : critical);
    }
    if (odd) {
      sketch.bold(at, y - 4, says, anchor, role);
    } else {
      sketch.text(at, y + 4.5, says, anchor, Role.SOFT);
    }
  }

  /** A number that would lie on the broken line stands behind it. */
  private static double clear(double at, double wide, Axis axis, double critical) {
    double line = axis.place(critical);
    double end = critical < 0 ? at - wide : at + wide;
    boolean crosses = Math.min(at, end) < line + 2 && line - 2 < Math.max(at, end);
    return crosses ? line + (critical < 0 ? -5 : 5) : at;
  }

  private static double most(
      List<@Nullable Double> values, @Nullable Double critical, double least) {
    double most = critical == null ? least : Math.max(least, critical);
    for (Double each : values) {
      most = each == null ? most : Math.max(most, Math.abs(each));
    }
    return most;
  }

  private Message says() {
    long oddH = rows.stream().filter(row -> isOdd(row.h(), criticalH)).count();
    long oddK = rows.stream().filter(row -> isOdd(row.k(), row.criticalK())).count();
    return Message.of(
        "drawing.hk.says", Integer.toString(rows.size()), Long.toString(oddH), Long.toString(oddK));
  }

  private static boolean isOdd(@Nullable Double value, @Nullable Double critical) {
    return value != null && critical != null && Math.abs(value) > critical;
  }
}
