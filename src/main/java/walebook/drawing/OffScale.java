package walebook.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.quantity.Show;
import walebook.words.Words;

/**
 * What lies beyond the ends of a row's scale: in the margin, a double arrow with the figure, so
 * that nothing is hidden by a scale that the others set ({@link Reach}).
 *
 * @param below figures beyond the start, in the order of values
 * @param above figures beyond the end, the furthest first
 * @param pieces how many of them are pieces; the row's middle is none
 */
record OffScale(List<String> below, List<String> above, int pieces) {
  /** So many lines of figures at one end of a row. */
  static final int MOST = 4;

  /** From one figure to the next under it. */
  static final double LINE = 15;

  private static final OffScale NONE = new OffScale(List.of(), List.of(), 0);
  private static final double ARROW = 14;
  private static final double GAP = 6;

  OffScale {
    below = List.copyOf(below);
    above = List.copyOf(above);
  }

  /** What of a row an axis does not hold, its middle among it. */
  static OffScale of(DotRow row, Axis axis, Words words) {
    List<DotRow.Dot> off = new ArrayList<>();
    for (DotRow.Dot dot : row.dots()) {
      if (!holds(axis, dot.value())) {
        off.add(dot);
      }
    }
    Double middle = row.median();
    if (off.isEmpty() && (middle == null || holds(axis, middle))) {
      return NONE;
    }
    List<String> below = new ArrayList<>();
    List<String> above = new ArrayList<>();
    off.stream()
        .sorted(Comparator.comparingDouble(DotRow.Dot::value))
        .forEach(
            dot -> {
              if (dot.value() < axis.from()) {
                below.add(figure(dot, words));
              } else {
                above.add(0, figure(dot, words));
              }
            });
    if (middle != null && !holds(axis, middle)) {
      (middle < axis.from() ? below : above)
          .add(words.say("drawing.off.middle", Show.upTo(middle, 1)));
    }
    return new OffScale(below, above, off.size());
  }

  static boolean holds(Axis axis, double value) {
    return value >= axis.from() && value <= axis.to();
  }

  /** A value as it stands beside its arrow; one that was held to is the least it may be. */
  static String figure(DotRow.Dot dot, Words words) {
    String shown = Show.upTo(dot.value(), 1);
    return dot.held() ? words.say("drawing.off.at-least", shown) : shown;
  }

  boolean isEmpty() {
    return below.isEmpty() && above.isEmpty();
  }

  /** Room that all rows' figures take beyond the start of the axis. */
  static double roomBelow(List<OffScale> rows, int most) {
    return rows.stream().mapToDouble(each -> room(each.below, most)).max().orElse(0);
  }

  /** Room that all rows' figures take beyond the end of the axis. */
  static double roomAbove(List<OffScale> rows, int most) {
    return rows.stream().mapToDouble(each -> room(each.above, most)).max().orElse(0);
  }

  private static double room(List<String> figures, int most) {
    double wide = 0;
    for (String each : lines(figures, most)) {
      wide = Math.max(wide, TextWidth.of(each, Sketch.LABEL));
    }
    return wide == 0 ? 0 : wide + ARROW + GAP;
  }

  /** How high the figures stand, picture units. */
  double tall() {
    return LINE * Math.max(lines(below, MOST).size(), lines(above, MOST).size());
  }

  /** Draws them beside the axis, around the middle of the row, in so many lines at most. */
  void draw(Sketch sketch, Axis axis, double middle, int most) {
    side(sketch, lines(below, most), axis.start() - GAP, middle, true);
    side(sketch, lines(above, most), axis.end() + GAP, middle, false);
  }

  private static void side(
      Sketch sketch, List<String> lines, double x, double middle, boolean left) {
    double y = middle - LINE / 2 * (lines.size() - 1);
    double way = left ? -1 : 1;
    for (String each : lines) {
      arrow(sketch, x, y, way, 0);
      Shape.Anchor anchor = left ? Shape.Anchor.END : Shape.Anchor.START;
      sketch.text(x + way * ARROW, y + 4.5, each, anchor, Role.INK);
      y += LINE;
    }
  }

  /**
   * Says under a picture what its double arrows are; nothing where it has none.
   *
   * @param pieces how many are shown in all
   * @param base where the last line of text above stands
   * @return where the last line stands now
   */
  static double note(
      Sketch sketch, List<OffScale> rows, int pieces, double base, double wide, Words words) {
    int off = rows.stream().mapToInt(OffScale::pieces).sum();
    return rows.stream().allMatch(OffScale::isEmpty)
        ? base
        : note(sketch, words.say("drawing.off.note", off, pieces), base, wide);
  }

  /** The same of any sentence. */
  static double note(Sketch sketch, String says, double base, double wide) {
    double y = base + 4;
    for (String line : TextWidth.lines(says, Sketch.LABEL, wide)) {
      y += LINE + 1;
      sketch.text(0, y, line, Shape.Anchor.START, Role.SOFT);
    }
    return y;
  }

  /** Every row's figures, for those who do not see the picture; empty where there are none. */
  static String told(List<DotRow> rows, List<OffScale> off) {
    List<String> told = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      List<String> figures = new ArrayList<>(off.get(i).below());
      figures.addAll(off.get(i).above());
      if (!figures.isEmpty()) {
        told.add(rows.get(i).label() + ": " + String.join(", ", figures));
      }
    }
    return String.join("; ", told);
  }

  /** A double arrow that begins at a place and points one way. */
  static void arrow(Sketch sketch, double x, double y, double right, double down) {
    PathLine line = head(null, x + 1 * right, y + 1 * down, right, down);
    sketch.path(
        head(line, x + 6 * right, y + 6 * down, right, down), null, Pen.solid(Role.INK, 1.7));
  }

  private static PathLine head(
      @Nullable PathLine line, double x, double y, double right, double down) {
    double x1 = x - 4 * down;
    double y1 = y - 4 * right;
    PathLine begun = line == null ? PathLine.from(x1, y1) : line.lift(x1, y1);
    return begun.to(x + 4 * right, y + 4 * down).to(x + 4 * down, y + 4 * right);
  }

  private static List<String> lines(List<String> figures, int most) {
    if (figures.size() <= most) {
      return figures;
    }
    if (most == 1) {
      return List.of(figures.get(0) + " +" + (figures.size() - 1));
    }
    List<String> some = new ArrayList<>(figures.subList(0, most - 1));
    some.add("+" + (figures.size() - most + 1));
    return some;
  }
}
