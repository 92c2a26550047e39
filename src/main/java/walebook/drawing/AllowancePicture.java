package walebook.drawing;

import java.util.List;
import walebook.quantity.Show;
import walebook.words.Words;
import walebook.working.Message;

/**
 * A pattern's allowance and the one that is sewn, to scale: a straight edge, a sleeve cap whose cut
 * edge lies outside, and an armhole whose cut edge lies inside; each with the change of its seam
 * line. Without a sleeve the straight edge stands alone; where there is little room, one under the
 * other.
 *
 * @param patternMm the pattern's allowance, not negative
 * @param sewnMm the sewn one, not negative
 * @param capTurn the cap's turn in radians, up to π
 * @param armholeTurn the armhole's turn in radians, up to π
 */
public record AllowancePicture(double patternMm, double sewnMm, double capTurn, double armholeTurn)
    implements Drawing {
  private static final double PANEL = 150;
  private static final double TALL = 132;
  private static final double ROW = TALL + 30;
  private static final int PANELS = 3;

  public AllowancePicture {
    if (!(patternMm >= 0 && sewnMm >= 0 && patternMm <= 60 && sewnMm <= 60)) {
      throw new IllegalArgumentException("allowances must be 0 to 60 mm");
    }
    if (!(capTurn >= 0 && capTurn <= Math.PI && armholeTurn >= 0 && armholeTurn <= Math.PI)) {
      throw new IllegalArgumentException("turns must be 0 to π");
    }
  }

  @Override
  public double leastWidth() {
    return PANEL + 110;
  }

  @Override
  public double ownWidth() {
    return 3 * PANEL + 80;
  }

  @Override
  public Picture at(double width, Words words) {
    double wide = takenWidth(width);
    int panels = capTurn + armholeTurn > 0 ? PANELS : 1;
    int columns = Math.max(1, Math.min(panels, (int) (wide / PANEL)));
    int rows = (panels + columns - 1) / columns;
    double perMm = 30 / Math.max(1, Math.max(patternMm, sewnMm));
    Sketch sketch = new Sketch();
    double d = patternMm - sewnMm;
    List<String> labels =
        List.of(
            words.say("drawing.allowance.edge", signed(d)),
            words.say("drawing.allowance.cap", signed(d * capTurn)),
            words.say("drawing.allowance.armhole", signed(-d * armholeTurn)));
    double panel = wide / columns;
    for (int i = 0; i < panels; i++) {
      int row = i / columns;
      double x = panel * (i - row * columns + 0.5);
      double y = row * ROW;
      switch (i) {
        case 0 -> straight(sketch, x, y, perMm);
        case 1 -> arc(sketch, x, y, perMm, capTurn, 1);
        default -> arc(sketch, x, y, perMm, armholeTurn, -1);
      }
      String says = TextWidth.fit(labels.get(i), Sketch.LABEL, panel - 8);
      sketch.text(x, y + TALL + 20, says, Shape.Anchor.MIDDLE, Role.INK);
    }
    double base = (rows - 1) * ROW + TALL;
    key(sketch, words, base + 48, wide);
    return sketch.picture(wide, base + 104, says());
  }

  private void straight(Sketch sketch, double x, double y, double perMm) {
    double edge = y + 30;
    sketch.rect(x - 60, edge, 120, TALL - 38, Role.CLOTH, null);
    sketch.line(x - 60, edge, x + 60, edge, Pen.solid(Role.SOFT, 1.6));
    double pattern = edge + patternMm * perMm;
    double sewn = edge + sewnMm * perMm;
    sketch.line(x - 60, pattern, x + 60, pattern, Pen.dashed(Role.INK, 1.8));
    sketch.line(x - 60, sewn, x + 60, sewn, Pen.solid(Role.ACCENT, 2.6));
    Arrow.draw(sketch, x, pattern, x, sewn, Pen.solid(Role.ACCENT, 1.6));
  }

  /**
   * An arch of cloth.
   *
   * @param side 1 when the cloth lies inside the arch and its cut edge outside, −1 the other way
   */
  private void arc(Sketch sketch, double x, double y, double perMm, double turn, int side) {
    double seam = side > 0 ? 46 : 62;
    double centre = y + (side > 0 ? 106 : 118);
    double edge = seam + side * patternMm * perMm;
    double deep = side > 0 ? Math.max(8, seam - 26) : seam + 22;
    double half = Math.max(0.02, turn / 2);
    sketch.path(area(x, centre, edge, deep, half), Role.CLOTH, null);
    sketch.path(bow(x, centre, edge, half), null, Pen.solid(Role.SOFT, 1.6));
    sketch.path(bow(x, centre, seam, half), null, Pen.dashed(Role.INK, 1.8));
    double sewn = edge - side * sewnMm * perMm;
    sketch.path(bow(x, centre, sewn, half), null, Pen.solid(Role.ACCENT, 2.6));
    Arrow.draw(sketch, x, centre - seam, x, centre - sewn, Pen.solid(Role.ACCENT, 1.6));
  }

  private static PathLine bow(double x, double y, double radius, double half) {
    PathLine line = PathLine.from(x - radius * Math.sin(half), y - radius * Math.cos(half));
    return onto(line, x, y, radius, -half, half);
  }

  private static PathLine area(double x, double y, double outer, double inner, double half) {
    PathLine line = bow(x, y, outer, half);
    line.to(x + inner * Math.sin(half), y - inner * Math.cos(half));
    return onto(line, x, y, inner, half, -half).close();
  }

  private static PathLine onto(
      PathLine line, double x, double y, double radius, double from, double to) {
    int steps = 24;
    for (int i = 1; i <= steps; i++) {
      double angle = from + (to - from) * i / steps;
      line.to(x + radius * Math.sin(angle), y - radius * Math.cos(angle));
    }
    return line;
  }

  private void key(Sketch sketch, Words words, double y, double wide) {
    sketch.line(14, y - 4, 40, y - 4, Pen.solid(Role.SOFT, 1.6));
    label(sketch, words.say("drawing.allowance.cut"), y, wide);
    sketch.line(14, y + 16, 40, y + 16, Pen.dashed(Role.INK, 1.8));
    label(sketch, words.say("drawing.allowance.pattern", Show.mm(patternMm)), y + 20, wide);
    sketch.line(14, y + 36, 40, y + 36, Pen.solid(Role.ACCENT, 2.6));
    label(sketch, words.say("drawing.allowance.sewn", Show.mm(sewnMm)), y + 40, wide);
  }

  private static void label(Sketch sketch, String says, double y, double wide) {
    String fits = TextWidth.fit(says, Sketch.LABEL, wide - 56);
    sketch.text(48, y, fits, Shape.Anchor.START, Role.INK);
  }

  private static String signed(double mm) {
    return (mm > 0 ? "+" : "") + Show.fixed(mm, 1) + " mm";
  }

  private Message says() {
    double d = patternMm - sewnMm;
    return Message.of(
        "drawing.allowance.says",
        Show.mm(patternMm),
        Show.mm(sewnMm),
        signed(d),
        signed(d * capTurn),
        signed(-d * armholeTurn));
  }
}
