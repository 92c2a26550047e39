package walebook.drawing;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import walebook.words.Words;

/** Writes a picture as SVG 1.1 text (W3C Recommendation, second edition, 2011). */
public final class Svg {
  private final Palette palette;
  private final StringBuilder out = new StringBuilder();

  private Svg(Palette palette) {
    this.palette = palette;
  }

  /** The picture as a whole SVG file, its text alternative as the title. */
  public static String of(Picture picture, Palette palette, Words words) {
    Svg svg = new Svg(palette);
    String says = escape(words.say(picture.says()));
    String width = number(picture.width());
    String height = number(picture.height());
    svg.out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    svg.out.append(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" width=\"%s\" height=\"%s\" viewBox=\"0 0 %s %s\">\n"
            .formatted(width, height, width, height));
    svg.out.append("<title>").append(says).append("</title>\n");
    picture.shapes().forEach(svg::shape);
    return svg.out.append("</svg>\n").toString();
  }

  private void shape(Shape shape) {
    if (shape instanceof Shape.Line line) {
      open("line").at("x1", line.x1()).at("y1", line.y1()).at("x2", line.x2()).at("y2", line.y2());
      ink(null, line.pen()).end();
    } else if (shape instanceof Shape.Rect rect) {
      open("rect").at("x", rect.x()).at("y", rect.y());
      at("width", rect.width()).at("height", rect.height()).at("rx", rect.round());
      ink(rect.fill(), rect.pen()).end();
    } else if (shape instanceof Shape.Circle circle) {
      open("circle").at("cx", circle.x()).at("cy", circle.y()).at("r", circle.radius());
      ink(circle.fill(), circle.pen()).end();
    } else if (shape instanceof Shape.Path path) {
      open("path").at("d", moves(path)).ink(path.fill(), path.pen()).end();
    } else if (shape instanceof Shape.Text text) {
      text(text);
    }
  }

  private void text(Shape.Text text) {
    open("text").at("x", text.x()).at("y", text.y()).at("font-size", text.size());
    at("font-family", "Atkinson Hyperlegible Next, Noto Sans, sans-serif");
    at("text-anchor", text.anchor().name().toLowerCase(Locale.ROOT));
    if (text.bold()) {
      at("font-weight", "bold");
    }
    ink(text.role(), null);
    out.append('>').append(escape(text.says())).append("</text>\n");
  }

  private static String moves(Shape.Path path) {
    StringBuilder d = new StringBuilder();
    for (Shape.Move move : path.moves()) {
      if (move instanceof Shape.To to) {
        d.append('M').append(numbers(to.x(), to.y()));
      } else if (move instanceof Shape.LineTo to) {
        d.append('L').append(numbers(to.x(), to.y()));
      } else if (move instanceof Shape.CurveTo to) {
        d.append('C').append(numbers(to.x1(), to.y1(), to.x2(), to.y2(), to.x(), to.y()));
      } else {
        d.append('Z');
      }
    }
    return d.toString();
  }

  private Svg ink(@Nullable Role fill, @Nullable Pen pen) {
    at("fill", fill == null ? "none" : palette.colour(fill));
    if (pen != null) {
      at("stroke", palette.colour(pen.role())).at("stroke-width", pen.width());
      at("stroke-linecap", "round").at("stroke-linejoin", "round");
      if (pen.dash() != Pen.Dash.SOLID) {
        at("stroke-dasharray", numbers(pen.dashes()));
      }
    }
    return this;
  }

  private Svg open(String name) {
    out.append('<').append(name);
    return this;
  }

  private Svg at(String name, double value) {
    return at(name, number(value));
  }

  private Svg at(String name, String value) {
    out.append(' ').append(name).append("=\"").append(value).append('"');
    return this;
  }

  private void end() {
    out.append("/>\n");
  }

  private static String numbers(double... values) {
    StringBuilder all = new StringBuilder();
    for (double value : values) {
      all.append(all.isEmpty() ? "" : " ").append(number(value));
    }
    return all.toString();
  }

  private static String number(double value) {
    String text = String.format(Locale.ROOT, "%.2f", value);
    return text.replaceAll("\\.?0+$", "");
  }

  private static String escape(String text) {
    StringBuilder safe = new StringBuilder();
    text.codePoints()
        .forEach(
            letter -> {
              switch (letter) {
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '&' -> safe.append("&amp;");
                case '"' -> safe.append("&quot;");
                default -> {
                  boolean xml = letter >= 0x20 || letter == '\t' || letter == '\n';
                  boolean pair = letter >= 0xD800 && letter <= 0xDFFF;
                  if (xml && !pair && letter != 0xFFFE && letter != 0xFFFF) {
                    safe.appendCodePoint(letter);
                  }
                }
              }
            });
    return safe.toString();
  }
}
