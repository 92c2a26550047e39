package walebook.drawing;

import java.util.ArrayList;
import java.util.List;
import walebook.words.Words;
import walebook.working.Message;

/**
 * Small plots beside and under each other, each with its title.
 *
 * @param panels in reading order
 */
public record SmallMultiples(List<Panel> panels) implements Drawing {
  private static final double LEAST = 320;
  private static final double GAP = 28;
  private static final double TITLE = 26;

  /** One small plot. */
  public record Panel(String title, Drawing drawing) {}

  public SmallMultiples {
    panels = List.copyOf(panels);
  }

  @Override
  public double leastWidth() {
    return panels.stream().mapToDouble(each -> each.drawing().leastWidth()).max().orElse(LEAST);
  }

  @Override
  public double ownWidth() {
    return Math.max(leastWidth(), 2 * LEAST + GAP);
  }

  @Override
  public Picture at(double width, Words words) {
    double wide = takenWidth(width);
    double least = Math.max(LEAST, leastWidth());
    int fit = (int) Math.max(1, Math.floor((wide + GAP) / (least + GAP)));
    int columns = Math.max(1, Math.min(Math.min(3, fit), panels.size()));
    double each = (wide - GAP * (columns - 1)) / columns;
    Sketch sketch = new Sketch();
    double top = 0;
    for (int begin = 0; begin < panels.size(); begin += columns) {
      double tallest = 0;
      for (int i = begin; i < Math.min(panels.size(), begin + columns); i++) {
        double left = (i - begin) * (each + GAP);
        Panel panel = panels.get(i);
        String title = TextWidth.fit(panel.title(), Sketch.LABEL, each);
        sketch.bold(left, top + 15, title, Shape.Anchor.START, Role.INK);
        Picture picture = panel.drawing().at(each, words);
        for (Shape shape : picture.shapes()) {
          sketch.add(moved(shape, left, top + TITLE));
        }
        tallest = Math.max(tallest, picture.height());
      }
      top += TITLE + tallest + GAP;
    }
    List<String> titles = panels.stream().map(Panel::title).toList();
    return sketch.picture(
        wide,
        Math.max(1, top - GAP),
        Message.of(
            "drawing.multiples.says", Integer.toString(panels.size()), String.join("; ", titles)));
  }

  private static Shape moved(Shape shape, double x, double y) {
    if (shape instanceof Shape.Line line) {
      return new Shape.Line(line.x1() + x, line.y1() + y, line.x2() + x, line.y2() + y, line.pen());
    }
    if (shape instanceof Shape.Rect rect) {
      return new Shape.Rect(
          rect.x() + x,
          rect.y() + y,
          rect.width(),
          rect.height(),
          rect.round(),
          rect.fill(),
          rect.pen());
    }
    if (shape instanceof Shape.Circle circle) {
      return new Shape.Circle(
          circle.x() + x, circle.y() + y, circle.radius(), circle.fill(), circle.pen());
    }
    if (shape instanceof Shape.Text text) {
      return new Shape.Text(
          text.x() + x,
          text.y() + y,
          text.says(),
          text.size(),
          text.bold(),
          text.anchor(),
          text.role());
    }
    Shape.Path path = (Shape.Path) shape;
    List<Shape.Move> moves = new ArrayList<>();
    path.moves().forEach(move -> moves.add(moved(move, x, y)));
    return new Shape.Path(moves, path.fill(), path.pen());
  }

  private static Shape.Move moved(Shape.Move move, double x, double y) {
    if (move instanceof Shape.To to) {
      return new Shape.To(to.x() + x, to.y() + y);
    }
    if (move instanceof Shape.LineTo to) {
      return new Shape.LineTo(to.x() + x, to.y() + y);
    }
    if (move instanceof Shape.CurveTo to) {
      return new Shape.CurveTo(
          to.x1() + x, to.y1() + y, to.x2() + x, to.y2() + y, to.x() + x, to.y() + y);
    }
    return move;
  }
}
