package walebook.drawing;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** One thing in a picture; places are picture units, x to the right, y downwards. */
public sealed interface Shape {

  /** A straight line. */
  record Line(double x1, double y1, double x2, double y2, Pen pen) implements Shape {
    public Line {
      Objects.requireNonNull(pen, "pen");
    }
  }

  /**
   * A rectangle.
   *
   * @param round radius of its corners
   * @param fill null for none
   * @param pen null for no outline
   */
  record Rect(
      double x,
      double y,
      double width,
      double height,
      double round,
      @Nullable Role fill,
      @Nullable Pen pen)
      implements Shape {
    public Rect {
      if (!(width >= 0 && height >= 0)) {
        throw new IllegalArgumentException("width and height must not be below 0");
      }
    }
  }

  /** A circle; fill or pen may be null. */
  record Circle(double x, double y, double radius, @Nullable Role fill, @Nullable Pen pen)
      implements Shape {
    public Circle {
      if (!(radius >= 0)) {
        throw new IllegalArgumentException("radius must not be below 0: " + radius);
      }
    }
  }

  /** A free line of moves; fill or pen may be null. */
  record Path(List<Move> moves, @Nullable Role fill, @Nullable Pen pen) implements Shape {
    public Path {
      moves = List.copyOf(moves);
      if (moves.isEmpty() || !(moves.get(0) instanceof To)) {
        throw new IllegalArgumentException("moves must begin with a To");
      }
    }
  }

  /**
   * A line of text.
   *
   * @param x where its anchor stands
   * @param y its base line
   * @param size height of the type in picture units
   */
  record Text(double x, double y, String says, double size, boolean bold, Anchor anchor, Role role)
      implements Shape {
    public Text {
      Objects.requireNonNull(says, "says");
      Objects.requireNonNull(anchor, "anchor");
      Objects.requireNonNull(role, "role");
    }

    /** The left end of the text as estimated. */
    public double left() {
      double wide = TextWidth.of(says, size);
      return switch (anchor) {
        case START -> x;
        case MIDDLE -> x - wide / 2;
        case END -> x - wide;
      };
    }
  }

  /** Which end of a text stands at its place. */
  enum Anchor {
    START,
    MIDDLE,
    END
  }

  /** One move of a path. */
  sealed interface Move {}

  /** Lifts the pencil and goes there. */
  record To(double x, double y) implements Move {}

  /** Draws straight to there. */
  record LineTo(double x, double y) implements Move {}

  /** Draws a cubic curve with two handles. */
  record CurveTo(double x1, double y1, double x2, double y2, double x, double y) implements Move {}

  /** Draws back to the last {@link To}. */
  record Close() implements Move {}
}
