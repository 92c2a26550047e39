package walebook.drawing;

/**
 * The threads of one row of stitches.
 *
 * @param axis mm along the seam
 * @param lengthMm feed for each needle drop
 * @param top where the swing begins, in picture units
 * @param tall height of the swing in picture units
 */
record StitchRow(Axis axis, double lengthMm, double top, double tall) {
  private static final Pen THREAD = Pen.solid(Role.ACCENT, 2.6);
  private static final Pen LOOPER = Pen.solid(Role.SOFT, 1.8);

  void straight(Sketch sketch) {
    double gap = Math.min(lengthMm * axis.perUnit() * 0.12, 3);
    for (int n = 0; n < count(); n++) {
      if (n > 0) {
        sketch.line(x(n - 1) + gap, top, x(n) - gap, top, THREAD);
      }
      hole(sketch, x(n), top);
    }
  }

  /** A swing takes this many drops of the needle; the needle goes there and back. */
  void zigzag(Sketch sketch, int steps) {
    PathLine thread = PathLine.from(x(0), swing(0, steps));
    for (int n = 1; n < count(); n++) {
      thread.to(x(n), swing(n, steps));
    }
    sketch.path(thread, null, THREAD);
    for (int n = 0; n < count(); n++) {
      hole(sketch, x(n), swing(n, steps));
    }
  }

  void overlock(Sketch sketch) {
    double edge = top + tall;
    sketch.line(axis.start() - 6, edge, axis.end() + 6, edge, Pen.solid(Role.SOFT, 1));
    for (int n = 1; n < count(); n++) {
      PathLine loop =
          PathLine.from(x(n - 1), top)
              .curve(x(n - 1), top + tall * 0.5, mid(n) - 1, edge - tall * 0.1, mid(n), edge + 3)
              .curve(mid(n) + 1, edge - tall * 0.1, x(n), top + tall * 0.5, x(n), top);
      sketch.path(loop, null, LOOPER);
    }
    straight(sketch);
  }

  void cover(Sketch sketch) {
    for (int n = 1; n < count(); n++) {
      PathLine loop =
          PathLine.from(x(n - 1), top)
              .curve(mid(n), top + tall * 0.1, mid(n), top + tall * 0.9, x(n - 1), top + tall)
              .curve(x(n), top + tall * 0.9, x(n), top + tall * 0.1, x(n), top);
      sketch.path(loop, null, LOOPER);
    }
    straight(sketch);
    new StitchRow(axis, lengthMm, top + tall, 0).straight(sketch);
  }

  private void hole(Sketch sketch, double x, double y) {
    sketch.disc(x, y, 2.4, Role.INK);
  }

  private double swing(int n, int steps) {
    int at = n % (2 * steps);
    double part = at <= steps ? (double) at / steps : (double) (2 * steps - at) / steps;
    return top + tall * part;
  }

  private double x(int n) {
    return axis.place(n * lengthMm);
  }

  private double mid(int n) {
    return (x(n - 1) + x(n)) / 2;
  }

  private int count() {
    return (int) Math.min(400, Math.floor(axis.to() / lengthMm + 1e-9)) + 1;
  }
}
