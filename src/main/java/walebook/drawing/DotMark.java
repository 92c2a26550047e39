package walebook.drawing;

import org.jspecify.annotations.Nullable;

/** The mark of one test piece: its shape tells the series, filled or open whether it gave. */
public final class DotMark {
  private DotMark() {}

  /**
   * Draws it.
   *
   * @param series 0 disc, 1 square, 2 triangle, 3 diamond, 4 triangle on its head
   * @param held open with an arrow to the right
   */
  public static void draw(
      Sketch sketch, double x, double y, double r, int series, boolean held, Role role) {
    if (held) {
      PathLine head =
          PathLine.from(x + r, y).to(x + r + 7, y).lift(x + r + 4, y - 3).to(x + r + 7, y);
      sketch.path(head.to(x + r + 4, y + 3), null, Pen.solid(role, 1.5));
    }
    mark(sketch, x, y, r, series, held, role);
  }

  /** Draws the mark of a dot; one that stands apart is open, without an arrow. */
  static void draw(
      Sketch sketch, double x, double y, double r, int series, DotRow.Dot dot, Role role) {
    if (dot.apart()) {
      mark(sketch, x, y, r, series, true, role);
    } else {
      draw(sketch, x, y, r, series, dot.held(), role);
    }
  }

  private static void mark(
      Sketch sketch, double x, double y, double r, int series, boolean open, Role role) {
    Role fill = open ? Role.CARD : role;
    Pen pen = Pen.solid(open ? role : Role.CARD, open ? 1.7 : 0.8);
    if (series == 0) {
      sketch.add(new Shape.Circle(x, y, open ? r - 0.6 : r, fill, pen));
    } else {
      shape(sketch, outline(x, y, r, series), fill, pen);
    }
  }

  private static void shape(Sketch sketch, PathLine line, @Nullable Role fill, Pen pen) {
    sketch.path(line.close(), fill, pen);
  }

  private static PathLine outline(double x, double y, double r, int series) {
    double s = r * 0.9;
    return switch (series) {
      case 1 -> PathLine.from(x - s, y - s).to(x + s, y - s).to(x + s, y + s).to(x - s, y + s);
      case 2 ->
          PathLine.from(x, y - r * 1.1).to(x + r * 1.1, y + r * 0.9).to(x - r * 1.1, y + r * 0.9);
      case 3 ->
          PathLine.from(x, y - r * 1.25)
              .to(x + r * 1.25, y)
              .to(x, y + r * 1.25)
              .to(x - r * 1.25, y);
      default ->
          PathLine.from(x, y + r * 1.1).to(x + r * 1.1, y - r * 0.9).to(x - r * 1.1, y - r * 0.9);
    };
  }
}
