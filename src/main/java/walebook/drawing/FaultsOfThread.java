package walebook.drawing;

/** Faults that show in the thread; drawn on 112 × 72. */
final class FaultsOfThread {
  static final Pen EDGE = Pen.solid(Role.SOFT, 1.2);
  static final Pen THREAD = Pen.solid(Role.ACCENT, 2.2);
  static final Pen WRONG = Pen.solid(Role.NOT_MET, 2.2);

  private FaultsOfThread() {}

  static void cloth(Sketch sketch) {
    sketch.add(new Shape.Rect(6, 8, 100, 56, 4, Role.CLOTH, EDGE));
  }

  static void stitches(Sketch sketch, double from, double to, double y) {
    for (double x = from; x + 8 <= to + 0.1; x += 11) {
      sketch.line(x, y, x + 8, y, THREAD);
    }
  }

  static void popped(Sketch sketch) {
    cloth(sketch);
    stitches(sketch, 12, 42, 36);
    stitches(sketch, 71, 101, 36);
    PathLine left = PathLine.from(42, 36).curve(47, 36, 49, 32, 48, 26);
    PathLine right = PathLine.from(69, 36).curve(64, 36, 62, 40, 63, 47);
    sketch.path(left, null, WRONG).path(right, null, WRONG);
    PathLine gap = PathLine.from(44, 36).curve(50, 31, 61, 31, 67, 36);
    sketch.path(gap.curve(61, 41, 50, 41, 44, 36), Role.CARD, Pen.solid(Role.SOFT, 1));
  }

  static void skipped(Sketch sketch) {
    cloth(sketch);
    stitches(sketch, 12, 42, 36);
    sketch.path(PathLine.from(45, 36).curve(54, 28, 64, 28, 72, 36), null, WRONG);
    stitches(sketch, 75, 101, 36);
    for (double x : new double[] {54, 63}) {
      sketch.ring(x, 42, 2, Pen.solid(Role.NOT_MET, 1.1));
    }
  }

  static void nest(Sketch sketch) {
    cloth(sketch);
    stitches(sketch, 46, 101, 36);
    PathLine wad =
        PathLine.from(44, 36)
            .curve(20, 20, 12, 40, 26, 46)
            .curve(44, 54, 46, 24, 28, 26)
            .curve(8, 28, 18, 56, 34, 48)
            .curve(48, 42, 34, 18, 20, 30)
            .curve(8, 44, 40, 52, 40, 34)
            .curve(38, 22, 16, 24, 22, 42)
            .curve(24, 52, 14, 54, 12, 58);
    sketch.path(wad, null, Pen.solid(Role.NOT_MET, 1.5));
  }

  static void grinning(Sketch sketch) {
    sketch.add(new Shape.Rect(6, 8, 100, 22, 4, Role.CLOTH, EDGE));
    sketch.add(new Shape.Rect(6, 42, 100, 22, 4, Role.CLOTH, EDGE));
    for (double x = 14; x < 104; x += 12) {
      sketch.line(x, 28, x + 3, 44, WRONG);
    }
    arrow(sketch, 56, 22, 56, 12);
    arrow(sketch, 56, 50, 56, 60);
  }

  static void arrow(Sketch sketch, double x1, double y1, double x2, double y2) {
    double side = Math.signum(y2 - y1) * 4;
    PathLine line = PathLine.from(x1, y1).to(x2, y2).lift(x2 - 4, y2 - side).to(x2, y2);
    sketch.path(line.to(x2 + 4, y2 - side), null, Pen.solid(Role.INK, 1.4));
  }
}
