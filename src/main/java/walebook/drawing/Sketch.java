package walebook.drawing;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.working.Message;

/** Collects shapes from back to front and ends as a {@link Picture}. */
public final class Sketch {
  /** Type size of labels in pictures. */
  public static final double LABEL = 13;

  private final List<Shape> shapes = new ArrayList<>();

  public Sketch line(double x1, double y1, double x2, double y2, Pen pen) {
    return add(new Shape.Line(x1, y1, x2, y2, pen));
  }

  public Sketch rect(
      double x, double y, double width, double height, @Nullable Role fill, @Nullable Pen pen) {
    return add(new Shape.Rect(x, y, width, height, 0, fill, pen));
  }

  public Sketch round(
      double x, double y, double width, double height, double round, @Nullable Role fill) {
    return add(new Shape.Rect(x, y, width, height, round, fill, null));
  }

  public Sketch disc(double x, double y, double radius, Role fill) {
    return add(new Shape.Circle(x, y, radius, fill, null));
  }

  public Sketch ring(double x, double y, double radius, Pen pen) {
    return add(new Shape.Circle(x, y, radius, null, pen));
  }

  public Sketch path(PathLine line, @Nullable Role fill, @Nullable Pen pen) {
    return add(new Shape.Path(line.moves(), fill, pen));
  }

  public Sketch text(double x, double y, String says, Shape.Anchor anchor, Role role) {
    return add(new Shape.Text(x, y, says, LABEL, false, anchor, role));
  }

  public Sketch bold(double x, double y, String says, Shape.Anchor anchor, Role role) {
    return add(new Shape.Text(x, y, says, LABEL, true, anchor, role));
  }

  public Sketch add(Shape shape) {
    shapes.add(shape);
    return this;
  }

  public Picture picture(double width, double height, Message says) {
    return new Picture(width, height, shapes, says);
  }
}
