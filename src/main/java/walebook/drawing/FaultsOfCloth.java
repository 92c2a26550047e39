package walebook.drawing;

/** Faults that show in the cloth itself; drawn on 112 × 72. */
final class FaultsOfCloth {
  private static final Pen EDGE = FaultsOfThread.EDGE;
  private static final Pen WRONG = FaultsOfThread.WRONG;

  private FaultsOfCloth() {}

  static void holes(Sketch sketch) {
    FaultsOfThread.cloth(sketch);
    FaultsOfThread.stitches(sketch, 12, 101, 36);
    for (double x : new double[] {21.5, 43.5, 54.5, 87.5}) {
      sketch.add(new Shape.Circle(x, 36, 4.2, Role.CARD, Pen.solid(Role.NOT_MET, 1.6)));
    }
  }

  static void ladder(Sketch sketch) {
    FaultsOfThread.cloth(sketch);
    for (double x : new double[] {20, 32, 80, 92}) {
      PathLine wale = PathLine.from(x - 3, 14);
      for (double y = 14; y < 58; y += 7) {
        wale.lift(x - 3, y).to(x, y + 5).to(x + 3, y);
      }
      sketch.path(wale, null, Pen.solid(Role.SOFT, 1));
    }
    sketch.round(46, 8, 20, 56, 0, Role.CARD);
    for (double y = 13; y < 62; y += 8) {
      sketch.line(46, y, 66, y, Pen.solid(Role.NOT_MET, 1.5));
    }
    sketch.line(46, 8, 46, 64, EDGE).line(66, 8, 66, 64, EDGE);
  }

  static void flip(Sketch sketch) {
    PathLine front = PathLine.from(6, 8).to(106, 8).to(106, 44).curve(80, 50, 40, 50, 6, 44);
    sketch.path(front.close(), Role.CLOTH, EDGE);
    PathLine turned =
        PathLine.from(6, 44)
            .curve(40, 50, 80, 50, 106, 44)
            .to(104, 28)
            .curve(80, 34, 40, 34, 8, 28);
    sketch.path(turned.close(), Role.WASH, WRONG);
    for (double x = 16; x < 96; x += 11) {
      sketch.line(x, 41, x + 7, 41.5, Pen.solid(Role.ACCENT, 1.8));
    }
    PathLine up = PathLine.from(56, 66).curve(70, 66, 72, 58, 66, 52).lift(71, 53).to(66, 52);
    sketch.path(up.to(65, 57.5), null, Pen.solid(Role.INK, 1.4));
  }

  static void bulk(Sketch sketch) {
    PathLine lump = PathLine.from(6, 46).to(36, 46).curve(44, 46, 44, 22, 56, 22);
    lump.curve(68, 22, 68, 46, 76, 46).to(106, 46).to(106, 56).to(6, 56).close();
    sketch.path(lump, Role.CLOTH, WRONG);
    sketch.line(6, 51, 106, 51, EDGE);
    PathLine inner =
        PathLine.from(42, 46).curve(48, 44, 50, 30, 56, 30).curve(62, 30, 64, 44, 70, 46);
    sketch.path(inner, null, EDGE);
    PathLine last =
        PathLine.from(46, 51).curve(50, 48, 52, 38, 56, 38).curve(60, 38, 62, 48, 66, 51);
    sketch.path(last, null, EDGE);
    PathLine foot = PathLine.from(16, 34).to(44, 14).to(50, 14).to(48, 19).to(20, 39).close();
    sketch.path(foot, Role.LINE, Pen.solid(Role.INK, 1.4));
    sketch.line(36, 20, 36, 6, Pen.solid(Role.INK, 2));
  }
}
