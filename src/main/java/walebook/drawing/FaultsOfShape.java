package walebook.drawing;

/** Faults that show in how the seam lies; drawn on 112 × 72. */
final class FaultsOfShape {
  private static final Pen EDGE = FaultsOfThread.EDGE;
  private static final Pen WRONG = FaultsOfThread.WRONG;

  private FaultsOfShape() {}

  static void tunnel(Sketch sketch) {
    FaultsOfThread.cloth(sketch);
    PathLine ridge =
        PathLine.from(6, 29).curve(20, 27, 30, 31, 44, 29).curve(60, 27, 80, 31, 106, 29);
    sketch.round(6, 29, 100, 14, 0, Role.WASH);
    sketch.path(ridge, null, Pen.solid(Role.SOFT, 1));
    for (double x = 14; x < 104; x += 9) {
      sketch.path(
          PathLine.from(x, 42).curve(x + 2, 37, x + 2, 34, x, 30),
          null,
          Pen.solid(Role.NOT_MET, 1.4));
    }
    FaultsOfThread.stitches(sketch, 10, 104, 27);
    FaultsOfThread.stitches(sketch, 10, 104, 45);
  }

  static void wavy(Sketch sketch) {
    PathLine cloth = PathLine.from(6, 14).to(106, 14).to(106, 52);
    cloth.curve(98, 62, 90, 62, 81, 52).curve(72, 42, 64, 42, 56, 52);
    cloth.curve(48, 62, 40, 62, 31, 52).curve(22, 42, 14, 42, 6, 52).close();
    sketch.path(cloth, Role.CLOTH, EDGE);
    sketch.path(PathLine.from(6, 40).wave(6, 40, 25, 8, 4), null, WRONG);
  }

  static void lettuce(Sketch sketch) {
    PathLine cloth = PathLine.from(6, 10).to(106, 10).to(106, 44);
    for (double x = 106; x > 10; x -= 12.5) {
      cloth.curve(x + 7, 66, x - 18, 66, x - 12.5, 44);
    }
    sketch.path(cloth.close(), Role.CLOTH, EDGE);
    PathLine rolls = PathLine.from(6, 44);
    for (double x = 6; x < 100; x += 12.5) {
      rolls.curve(x - 5, 68, x + 17, 68, x + 12.5, 44);
    }
    sketch.path(rolls, null, WRONG);
  }

  static void pucker(Sketch sketch) {
    FaultsOfThread.cloth(sketch);
    FaultsOfThread.stitches(sketch, 10, 104, 36);
    PathLine folds = PathLine.from(14, 30);
    for (double x = 14; x < 102; x += 13) {
      folds.lift(x, 32).curve(x - 3, 26, x + 2, 22, x - 1, 16);
      folds.lift(x + 5, 40).curve(x + 8, 46, x + 3, 50, x + 6, 57);
    }
    sketch.path(folds, null, Pen.solid(Role.NOT_MET, 1.5));
  }
}
