package walebook.drawing;

import java.util.List;
import walebook.quantity.Show;
import walebook.words.Words;
import walebook.working.Message;

/**
 * Stitched-down motifs along a line to scale, once joined by travelling stitches and once sewn one
 * by one: what is locked is hatched, what still stretches waves.
 *
 * @param lineMm the line that must stretch, over 0
 * @param motifsMm spans in order, each over 0
 * @param gapsMm gaps between them, one fewer
 */
public record LockedPicture(double lineMm, List<Double> motifsMm, List<Double> gapsMm)
    implements Drawing {
  private static final double SIDE = 14;
  private static final double STRIP = 30;

  public LockedPicture {
    motifsMm = List.copyOf(motifsMm);
    gapsMm = List.copyOf(gapsMm);
    double whole = sum(motifsMm) + sum(gapsMm);
    if (motifsMm.isEmpty() || gapsMm.size() != motifsMm.size() - 1) {
      throw new IllegalArgumentException("between motifs there is one gap fewer");
    }
    if (!(lineMm > 0 && whole <= lineMm + 1e-9)) {
      throw new IllegalArgumentException("motifs and gaps must fit on the line");
    }
  }

  private static double sum(List<Double> lengths) {
    return lengths.stream().mapToDouble(Double::doubleValue).sum();
  }

  @Override
  public double leastWidth() {
    return 260;
  }

  @Override
  public double ownWidth() {
    return 460;
  }

  @Override
  public Picture at(double width, Words words) {
    double wide = takenWidth(width);
    Sketch sketch = new Sketch();
    strip(sketch, wide, 24, words.say("drawing.locked.joined", Show.mm(locked(true))), true);
    strip(sketch, wide, 92, words.say("drawing.locked.single", Show.mm(locked(false))), false);
    String line = words.say("drawing.locked.line", Show.mm(lineMm));
    sketch.text(SIDE, 146, line, Shape.Anchor.START, Role.SOFT);
    return sketch.picture(wide, 156, says());
  }

  private double locked(boolean joined) {
    return sum(motifsMm) + (joined ? sum(gapsMm) : 0);
  }

  private void strip(Sketch sketch, double wide, double y, String says, boolean joined) {
    Axis axis = new Axis(0, lineMm, SIDE, wide - SIDE);
    String fits = TextWidth.fit(says, Sketch.LABEL, wide - 2 * SIDE);
    sketch.text(SIDE, y - 8, fits, Shape.Anchor.START, Role.INK);
    sketch.round(SIDE, y, wide - 2 * SIDE, STRIP, 3, Role.CLOTH);
    double at = (lineMm - locked(true)) / 2;
    free(sketch, axis.place(0), axis.place(at), y);
    for (int i = 0; i < motifsMm.size(); i++) {
      double end = at + motifsMm.get(i);
      hatch(sketch, axis.place(at), axis.place(end), y);
      Shape.Rect motif =
          new Shape.Rect(
              axis.place(at),
              y + 3,
              axis.place(end) - axis.place(at),
              STRIP - 6,
              2,
              null,
              Pen.solid(Role.INK, 2));
      sketch.add(motif);
      at = end;
      if (i < gapsMm.size()) {
        double next = at + gapsMm.get(i);
        if (joined) {
          double middle = y + STRIP / 2;
          sketch.line(axis.place(at), middle, axis.place(next), middle, Pen.dashed(Role.INK, 2.4));
        } else {
          free(sketch, axis.place(at), axis.place(next), y);
        }
        at = next;
      }
    }
    free(sketch, axis.place(at), axis.place(lineMm), y);
  }

  /** A wave tells that the cloth is free to stretch here. */
  private static void free(Sketch sketch, double from, double to, double y) {
    int halves = (int) Math.floor((to - from) / 6);
    if (halves > 0) {
      double half = (to - from) / halves;
      PathLine line = PathLine.from(from, y + STRIP / 2);
      sketch.path(
          line.wave(from, y + STRIP / 2, half, 4, halves), null, Pen.solid(Role.ACCENT, 1.6));
    }
  }

  private static void hatch(Sketch sketch, double from, double to, double y) {
    PathLine lines = PathLine.from(from, y + 3);
    for (double x = from + 3; x < to; x += 6) {
      lines.lift(x, y + STRIP - 3).to(Math.min(to, x + 6), y + 3);
    }
    sketch.path(lines, null, Pen.solid(Role.SOFT, 1));
  }

  private Message says() {
    return Message.of(
        "drawing.locked.says",
        Integer.toString(motifsMm.size()),
        Show.mm(lineMm),
        Show.mm(locked(true)),
        Show.mm(locked(false)));
  }
}
