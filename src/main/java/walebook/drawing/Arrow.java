package walebook.drawing;

/** A line with a head at one or both ends. */
final class Arrow {
  private static final double HEAD = 6;

  private Arrow() {}

  /** From the first place to the second, with its head there. */
  static void draw(Sketch sketch, double x1, double y1, double x2, double y2, Pen pen) {
    sketch.line(x1, y1, x2, y2, pen);
    head(sketch, x1, y1, x2, y2, pen);
  }

  /** With a head at both ends, as for a measure or a grain line. */
  static void both(Sketch sketch, double x1, double y1, double x2, double y2, Pen pen) {
    draw(sketch, x1, y1, x2, y2, pen);
    head(sketch, x2, y2, x1, y1, pen);
  }

  private static void head(Sketch sketch, double x1, double y1, double x2, double y2, Pen pen) {
    double long1 = Math.hypot(x2 - x1, y2 - y1);
    if (long1 < 1) {
      return;
    }
    double ux = (x2 - x1) / long1;
    double uy = (y2 - y1) / long1;
    double size = Math.min(HEAD, long1 / 2);
    PathLine line =
        PathLine.from(x2 - size * (ux - uy * 0.6), y2 - size * (uy + ux * 0.6))
            .to(x2, y2)
            .to(x2 - size * (ux + uy * 0.6), y2 - size * (uy - ux * 0.6));
    sketch.path(line, null, Pen.solid(pen.role(), pen.width()));
  }
}
