package walebook.desk.common;

import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;
import org.jspecify.annotations.Nullable;
import walebook.drawing.Palette;
import walebook.drawing.Pen;
import walebook.drawing.Role;
import walebook.drawing.Shape;

/** Draws plain shapes on a canvas. */
final class Pencil {
  static final String FAMILY = "Atkinson Hyperlegible Next";

  private final GraphicsContext on;
  private final Palette palette;

  Pencil(GraphicsContext on, Palette palette) {
    this.on = on;
    this.palette = palette;
    on.setLineCap(StrokeLineCap.ROUND);
    on.setLineJoin(StrokeLineJoin.ROUND);
    on.setTextBaseline(VPos.BASELINE);
  }

  void draw(Shape shape) {
    if (shape instanceof Shape.Line line) {
      take(line.pen());
      on.strokeLine(line.x1(), line.y1(), line.x2(), line.y2());
    } else if (shape instanceof Shape.Rect rect) {
      rect(rect);
    } else if (shape instanceof Shape.Circle circle) {
      circle(circle);
    } else if (shape instanceof Shape.Path path) {
      path(path);
    } else if (shape instanceof Shape.Text text) {
      text(text);
    }
  }

  private void rect(Shape.Rect rect) {
    double arc = 2 * rect.round();
    if (fill(rect.fill())) {
      on.fillRoundRect(rect.x(), rect.y(), rect.width(), rect.height(), arc, arc);
    }
    if (take(rect.pen())) {
      on.strokeRoundRect(rect.x(), rect.y(), rect.width(), rect.height(), arc, arc);
    }
  }

  private void circle(Shape.Circle circle) {
    double left = circle.x() - circle.radius();
    double top = circle.y() - circle.radius();
    double across = 2 * circle.radius();
    if (fill(circle.fill())) {
      on.fillOval(left, top, across, across);
    }
    if (take(circle.pen())) {
      on.strokeOval(left, top, across, across);
    }
  }

  private void path(Shape.Path path) {
    on.beginPath();
    for (Shape.Move move : path.moves()) {
      if (move instanceof Shape.To to) {
        on.moveTo(to.x(), to.y());
      } else if (move instanceof Shape.LineTo to) {
        on.lineTo(to.x(), to.y());
      } else if (move instanceof Shape.CurveTo to) {
        on.bezierCurveTo(to.x1(), to.y1(), to.x2(), to.y2(), to.x(), to.y());
      } else {
        on.closePath();
      }
    }
    if (fill(path.fill())) {
      on.fill();
    }
    if (take(path.pen())) {
      on.stroke();
    }
  }

  private void text(Shape.Text text) {
    FontWeight weight = text.bold() ? FontWeight.BOLD : FontWeight.NORMAL;
    on.setFont(Font.font(FAMILY, weight, text.size()));
    on.setTextAlign(
        switch (text.anchor()) {
          case START -> TextAlignment.LEFT;
          case MIDDLE -> TextAlignment.CENTER;
          case END -> TextAlignment.RIGHT;
        });
    on.setFill(colour(text.role()));
    on.fillText(text.says(), text.x(), text.y());
  }

  private boolean fill(@Nullable Role role) {
    if (role == null) {
      return false;
    }
    on.setFill(colour(role));
    return true;
  }

  private boolean take(@Nullable Pen pen) {
    if (pen == null) {
      return false;
    }
    on.setStroke(colour(pen.role()));
    on.setLineWidth(pen.width());
    on.setLineDashes(pen.dashes());
    return true;
  }

  private Color colour(Role role) {
    return Color.web(palette.colour(role));
  }
}
