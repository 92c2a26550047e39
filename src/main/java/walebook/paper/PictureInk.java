package walebook.paper;

import java.io.IOException;
import org.jspecify.annotations.Nullable;
import walebook.drawing.Palette;
import walebook.drawing.Pen;
import walebook.drawing.Picture;
import walebook.drawing.Role;
import walebook.drawing.Shape;

/**
 * Draws pictures as lines and fills. Greys are made for a copier: lines never lighter than half
 * black, light fills left white.
 */
final class PictureInk {
  /** Share of white above which a copier drops a grey. */
  static final float LIGHTEST = 0.5f;

  /** A circle's quarter as a cubic curve. */
  private static final double KAPPA = 0.5522847498;

  private final Ink ink;
  private final double left;
  private final double top;
  private final double scale;

  private PictureInk(Ink ink, double left, double top, double scale) {
    this.ink = ink;
    this.left = left;
    this.top = top;
    this.scale = scale;
  }

  /** Draws a picture from there, at so many mm for a picture unit. */
  static void draw(Ink ink, Picture picture, double x, double y, double scale) throws IOException {
    PictureInk into = new PictureInk(ink, x, y, scale);
    for (Shape shape : picture.shapes()) {
      into.shape(shape);
    }
  }

  private double x(double units) {
    return left + units * scale;
  }

  private double y(double units) {
    return top + units * scale;
  }

  private void shape(Shape shape) throws IOException {
    if (shape instanceof Shape.Line line) {
      draw(
          trail -> {
            trail.to(x(line.x1()), y(line.y1()));
            trail.line(x(line.x2()), y(line.y2()));
          },
          null,
          line.pen());
    } else if (shape instanceof Shape.Rect rect) {
      draw(trail -> rect(trail, rect), rect.fill(), rect.pen());
    } else if (shape instanceof Shape.Circle circle) {
      draw(trail -> circle(trail, circle), circle.fill(), circle.pen());
    } else if (shape instanceof Shape.Path path) {
      draw(trail -> path(trail, path), path.fill(), path.pen());
    } else if (shape instanceof Shape.Text text) {
      text(text);
    }
  }

  private void draw(Ink.Trace trace, @Nullable Role fill, @Nullable Pen pen) throws IOException {
    Float inside = fill == null ? null : fill(fill);
    Float line = pen == null ? null : stroke(pen.role());
    if (inside == null && line == null) {
      return;
    }
    if (pen == null) {
      ink.shape(trace, inside, null, 0);
      return;
    }
    double[] dashes = pen.dashes();
    for (int i = 0; i < dashes.length; i++) {
      dashes[i] = Math.max(dashes[i] * scale, i == 0 ? 0.05 : 0.6);
    }
    ink.shape(trace, inside, line, pen.width() * scale, dashes);
  }

  private void rect(Ink.Trail trail, Shape.Rect rect) throws IOException {
    double r = Math.min(rect.round(), Math.min(rect.width(), rect.height()) / 2);
    double x1 = rect.x();
    double y1 = rect.y();
    double x2 = x1 + rect.width();
    double y2 = y1 + rect.height();
    double k = r * (1 - KAPPA);
    trail.to(x(x1 + r), y(y1));
    trail.line(x(x2 - r), y(y1));
    trail.curve(x(x2 - k), y(y1), x(x2), y(y1 + k), x(x2), y(y1 + r));
    trail.line(x(x2), y(y2 - r));
    trail.curve(x(x2), y(y2 - k), x(x2 - k), y(y2), x(x2 - r), y(y2));
    trail.line(x(x1 + r), y(y2));
    trail.curve(x(x1 + k), y(y2), x(x1), y(y2 - k), x(x1), y(y2 - r));
    trail.line(x(x1), y(y1 + r));
    trail.curve(x(x1), y(y1 + k), x(x1 + k), y(y1), x(x1 + r), y(y1));
    trail.close();
  }

  private void circle(Ink.Trail trail, Shape.Circle circle) throws IOException {
    double r = circle.radius();
    rect(trail, new Shape.Rect(circle.x() - r, circle.y() - r, 2 * r, 2 * r, r, Role.INK, null));
  }

  private void path(Ink.Trail trail, Shape.Path path) throws IOException {
    for (Shape.Move move : path.moves()) {
      if (move instanceof Shape.To to) {
        trail.to(x(to.x()), y(to.y()));
      } else if (move instanceof Shape.LineTo to) {
        trail.line(x(to.x()), y(to.y()));
      } else if (move instanceof Shape.CurveTo to) {
        trail.curve(x(to.x1()), y(to.y1()), x(to.x2()), y(to.y2()), x(to.x()), y(to.y()));
      } else {
        trail.close();
      }
    }
  }

  private void text(Shape.Text text) throws IOException {
    Type type = new Type(text.size() * scale * 72 / 25.4, text.bold());
    double wide = ink.width(text.says(), type);
    double at =
        switch (text.anchor()) {
          case START -> x(text.x());
          case MIDDLE -> x(text.x()) - wide / 2;
          case END -> x(text.x()) - wide;
        };
    ink.grey(text.says(), at, y(text.y()), type, stroke(text.role()));
  }

  /** Paper-coloured strokes stay white: they are drawn over dark fills. */
  private static float stroke(Role role) {
    float grey = grey(role);
    return isPaper(role) ? 1 : Math.min(LIGHTEST, grey);
  }

  private static float fill(Role role) {
    float grey = grey(role);
    return grey > LIGHTEST ? 1 : grey;
  }

  private static boolean isPaper(Role role) {
    return role == Role.PAPER || role == Role.CARD;
  }

  private static float grey(Role role) {
    return Integer.parseInt(Palette.PRINT.colour(role).substring(1, 3), 16) / 255f;
  }
}
