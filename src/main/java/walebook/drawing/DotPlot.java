package walebook.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import walebook.quantity.Show;
import walebook.words.Words;
import walebook.working.Message;

/**
 * Settings under each other, each test piece a dot: gave is a filled mark, held is an open one with
 * an arrow to the right. What lies far off all others stands in the margin ({@link OffScale}).
 *
 * @param axisName what is measured, with its unit, such as {@code seam stretch, %}
 * @param rows from top to bottom
 * @param wanted a value that is asked for, drawn as a line; null for none
 * @param span what the scale spans; null for what the rows do
 */
public record DotPlot(
    String axisName, List<DotRow> rows, @Nullable Double wanted, @Nullable Span span)
    implements Drawing {
  private static final double DOT = 4.4;
  private static final double COUNT = 46;
  private static final double GAP = 12;
  private static final double LEAST_ROW = 34;
  private static final double TOP = 28;
  private static final double LABEL_LINE = 20;

  /** From one line of a label to its next. */
  private static final double LINE = 15;

  /** With more rows than this the scale stands above them too: its end may be scrolled away. */
  private static final int FEW_ROWS = 3;

  private static final String GOES_ON = "…";

  private static final double SCALE_ABOVE = 40;

  /** Below this width labels stand above their rows. */
  private static final double NARROW = 480;

  /** Half a number of the scale. */
  private static final double NARROW_START = 20;

  /**
   * What a scale spans.
   *
   * @param whole true for counts and grades, which have nothing between
   */
  public record Span(double least, double most, boolean whole) {}

  public DotPlot {
    Objects.requireNonNull(axisName, "axisName");
    rows = List.copyOf(rows);
  }

  /** A plot whose scale spans what its rows do. */
  public DotPlot(String axisName, List<DotRow> rows, @Nullable Double wanted) {
    this(axisName, rows, wanted, null);
  }

  /**
   * The same plot in parts one after the other, all on one scale.
   *
   * @param most rows of a part, 1 or more
   */
  public List<DotPlot> parts(int most) {
    Span all = spanned();
    // Parts of about the same height, lest the last be a single row.
    int parts = Math.max(1, (rows.size() + most - 1) / most);
    List<DotPlot> some = new ArrayList<>();
    for (int i = 0; i < parts; i++) {
      List<DotRow> part = rows.subList(i * rows.size() / parts, (i + 1) * rows.size() / parts);
      some.add(new DotPlot(axisName, part, wanted, all));
    }
    return some;
  }

  @Override
  public double leastWidth() {
    return 300;
  }

  @Override
  public double ownWidth() {
    return 640;
  }

  @Override
  public Picture at(double width, Words words) {
    double wide = takenWidth(width);
    boolean above = wide < NARROW;
    double labels = above ? 0 : labelRoom(wide);
    Axis axis = axis(above ? NARROW_START : labels + GAP, wide - COUNT - GAP, words);
    List<OffScale> off = rows.stream().map(row -> OffScale.of(row, axis, words)).toList();
    Sketch sketch = new Sketch();
    double head = rows.size() > FEW_ROWS ? SCALE_ABOVE : 0;
    double top = TOP + head;
    sketch.text(wide, head + 15, words.say("drawing.dots.pieces"), Shape.Anchor.END, Role.SOFT);
    List<Packed> packed = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      packed.add(Packed.of(rows.get(i), axis, off.get(i)));
    }
    double y = top;
    double bottom = top;
    for (Packed row : packed) {
      bottom += row.tall() + (above ? LABEL_LINE : 0);
    }
    scale(sketch, axis, top, bottom, head > 0);
    if (wanted != null) {
      double x = axis.place(wanted);
      sketch.line(x, top - 4, x, bottom, Pen.dashed(Role.ACCENT, 1.6));
      String says = words.say("drawing.dots.wanted", Show.upTo(wanted, 1));
      boolean left = x > (axis.start() + axis.end()) / 2;
      sketch.text(
          x + (left ? -5 : 5),
          head + 15,
          says,
          left ? Shape.Anchor.END : Shape.Anchor.START,
          Role.ACCENT);
    }
    for (Packed row : packed) {
      double tall = row.tall() + (above ? LABEL_LINE : 0);
      double middle = y + tall / 2 + (above ? LABEL_LINE / 2 : 0);
      double base = above ? y + 16 : middle + 4.5;
      label(sketch, row.row(), above ? wide : labels, base, above);
      row(sketch, axis, row, middle, wide);
      y += tall;
    }
    String name = TextWidth.fit(axisName, Sketch.LABEL, wide - axis.start());
    sketch.text(axis.start(), bottom + 36, name, Shape.Anchor.START, Role.INK);
    if (head > 0) {
      sketch.text(axis.start(), 15, name, Shape.Anchor.START, Role.INK);
    }
    double end = OffScale.note(sketch, off, pieces(), bottom + 36, wide, words);
    return sketch.picture(wide, end + 8, says(off));
  }

  private void scale(Sketch sketch, Axis axis, double top, double bottom, boolean numbersAbove) {
    boolean whole = span == null ? isWhole() : span.whole();
    if (axis.from() < 0 && axis.to() > 0) {
      sketch.line(axis.place(0), top, axis.place(0), bottom, Pen.solid(Role.SOFT, 1.6));
    }
    for (double tick : axis.ticks(tickCount(axis))) {
      if (whole && tick != Math.rint(tick)) {
        continue;
      }
      double x = axis.place(tick);
      sketch.line(x, top, x, bottom, Pen.solid(Role.LINE, 0.8));
      sketch.text(x, bottom + 17, Show.upTo(tick, 2), Shape.Anchor.MIDDLE, Role.SOFT);
      if (numbersAbove) {
        sketch.text(x, 35, Show.upTo(tick, 2), Shape.Anchor.MIDDLE, Role.SOFT);
      }
    }
  }

  private static void label(Sketch sketch, DotRow row, double room, double base, boolean above) {
    if (above) {
      String label = TextWidth.fit(row.label(), Sketch.LABEL, room);
      double wide = TextWidth.of(label, Sketch.LABEL) + 4;
      sketch.rect(0, base - 13, wide, 17, Role.CARD, null);
      sketch.text(0, base, label, Shape.Anchor.START, Role.INK);
      return;
    }
    // What tells settings apart often stands last.
    List<String> lines = TextWidth.inTwo(row.label(), Sketch.LABEL, room);
    double y = base - LINE / 2 * (lines.size() - 1);
    for (String each : lines) {
      sketch.text(room, y, each, Shape.Anchor.END, Role.INK);
      y += LINE;
    }
  }

  private static void row(Sketch sketch, Axis axis, Packed packed, double middle, double wide) {
    DotRow row = packed.row();
    String count = Integer.toString(row.dots().size());
    sketch.text(wide, middle + 4.5, count, Shape.Anchor.END, Role.SOFT);
    Double low = row.low();
    Double high = row.high();
    if (low != null && high != null) {
      double from = axis.place(low);
      sketch.round(from, middle - 8, Math.max(2, axis.place(high) - from), 16, 4, Role.WASH);
      if (low < axis.from()) {
        sketch.text(axis.start() + 3, middle + 4.5, GOES_ON, Shape.Anchor.START, Role.SOFT);
      }
      if (high > axis.to()) {
        sketch.text(axis.end() - 3, middle + 4.5, GOES_ON, Shape.Anchor.END, Role.SOFT);
      }
    }
    packed.off().draw(sketch, axis, middle, OffScale.MOST);
    Double median = row.median();
    if (median != null && OffScale.holds(axis, median)) {
      // Behind the dots and longer than their pile, so that it hides none of them.
      double x = axis.place(median);
      double half = packed.tall() / 2 - 3;
      sketch.line(x, middle - half, x, middle + half, Pen.solid(Role.INK, 2.4));
    }
    Role role = Role.series(row.series());
    for (DotPack.Placed placed : packed.dots()) {
      DotMark.draw(
          sketch,
          axis.place(placed.dot().value()),
          middle + placed.up(),
          DOT,
          row.series(),
          placed.dot(),
          role);
    }
  }

  private double labelRoom(double wide) {
    double longest =
        rows.stream().mapToDouble(row -> TextWidth.of(row.label(), Sketch.LABEL)).max().orElse(0);
    return Math.min(longest + 2, wide * 0.36);
  }

  /** A row with its dots in their places, and its height. */
  private record Packed(DotRow row, List<DotPack.Placed> dots, OffScale off, double tall) {
    static Packed of(DotRow row, Axis axis, OffScale off) {
      List<DotRow.Dot> inside =
          off.pieces() == 0
              ? row.dots()
              : row.dots().stream().filter(dot -> OffScale.holds(axis, dot.value())).toList();
      List<DotPack.Placed> dots = DotPack.of(inside, axis, DOT);
      double most = dots.stream().mapToDouble(dot -> Math.abs(dot.up())).max().orElse(0);
      double tall = Math.max(2 * (most + DOT), off.tall()) + 10;
      return new Packed(row, dots, off, Math.max(LEAST_ROW, tall));
    }
  }

  private boolean isWhole() {
    return rows.stream()
        .flatMap(row -> row.dots().stream())
        .allMatch(dot -> dot.value() == Math.rint(dot.value()));
  }

  /** The axis with its margins for what it does not hold. */
  private Axis axis(double start, double end, Words words) {
    Span all = span == null ? spanned() : span;
    Axis whole = Axis.around(all.least(), all.most(), start, end, 8);
    List<OffScale> off = rows.stream().map(row -> OffScale.of(row, whole, words)).toList();
    double from = start + OffScale.roomBelow(off, OffScale.MOST);
    return new Axis(whole.from(), whole.to(), from, end - OffScale.roomAbove(off, OffScale.MOST));
  }

  /** What the rows span, with a little room at either end; up to 100 where nothing is known. */
  private Span spanned() {
    DotSpan all = wanted == null ? DotSpan.of(rows) : DotSpan.of(rows, wanted);
    if (all == null) {
      return new Span(0, 100, isWhole());
    }
    double pad = room(all.least(), all.most());
    double from = all.least() >= 0 ? Math.max(0, all.least() - pad) : all.least() - pad;
    return new Span(from, all.most() + pad, isWhole());
  }

  /** Room beside the outermost; where all are one value, a span of its own around it. */
  private static double room(double least, double most) {
    double size = Math.max(Math.abs(least), Math.abs(most));
    boolean one = most - least <= 1e-6 * size;
    return one ? Math.max(1, 0.1 * size) : (most - least) * 0.04;
  }

  private static int tickCount(Axis axis) {
    return (int) Math.max(2, (axis.end() - axis.start()) / 70);
  }

  private int pieces() {
    return rows.stream().mapToInt(row -> row.dots().size()).sum();
  }

  private Message says(List<OffScale> off) {
    String middles = String.join("; ", rows.stream().map(DotPlot::told).toList());
    String settings = Integer.toString(rows.size());
    String pieces = Integer.toString(pieces());
    String far = OffScale.told(rows, off);
    return far.isEmpty()
        ? Message.of("drawing.dots.says", axisName, settings, pieces, middles)
        : Message.of("drawing.dots.says-off", axisName, settings, pieces, middles, far);
  }

  private static String told(DotRow row) {
    Double median = row.median();
    return row.label() + ": " + (median == null ? "–" : Show.upTo(median, 1));
  }
}
