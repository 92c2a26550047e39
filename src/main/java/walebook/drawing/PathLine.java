package walebook.drawing;

import java.util.ArrayList;
import java.util.List;

/** Collects the moves of a free line. */
public final class PathLine {
  private final List<Shape.Move> moves = new ArrayList<>();

  private PathLine(double x, double y) {
    moves.add(new Shape.To(x, y));
  }

  public static PathLine from(double x, double y) {
    return new PathLine(x, y);
  }

  public PathLine lift(double x, double y) {
    moves.add(new Shape.To(x, y));
    return this;
  }

  public PathLine to(double x, double y) {
    moves.add(new Shape.LineTo(x, y));
    return this;
  }

  public PathLine curve(double x1, double y1, double x2, double y2, double x, double y) {
    moves.add(new Shape.CurveTo(x1, y1, x2, y2, x, y));
    return this;
  }

  public PathLine close() {
    moves.add(new Shape.Close());
    return this;
  }

  /**
   * A wave along x from where the line stands.
   *
   * @param half length of half a wave
   * @param high how far it swings from the middle
   */
  PathLine wave(double x, double y, double half, double high, int halves) {
    double at = x;
    double side = -1;
    for (int i = 0; i < halves; i++) {
      double bend = y + side * high * 4 / 3;
      curve(at + half / 3, bend, at + half * 2 / 3, bend, at + half, y);
      at += half;
      side = -side;
    }
    return this;
  }

  List<Shape.Move> moves() {
    return List.copyOf(moves);
  }
}
