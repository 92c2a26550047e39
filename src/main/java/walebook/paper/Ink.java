package walebook.paper;

import java.awt.geom.PathIterator;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.jspecify.annotations.Nullable;

/** What is drawn on one page: places in mm from the top left corner, x right, y down. */
final class Ink {
  /** No line is thinner, mm: copiers lose hairlines. */
  static final double THIN = 0.3;

  static final double THICK = 0.6;

  private static final double POINTS_IN_MM = 72 / 25.4;

  private final PDPageContentStream out;
  private final Faces faces;
  private final double heightMm;

  Ink(PDPageContentStream out, Faces faces, double heightMm) throws IOException {
    this.out = out;
    this.faces = faces;
    this.heightMm = heightMm;
    out.setLineCapStyle(1);
    out.setLineJoinStyle(1);
  }

  /** Points as mm. */
  static double mm(double points) {
    return points / POINTS_IN_MM;
  }

  static float points(double mm) {
    return (float) (mm * POINTS_IN_MM);
  }

  private float down(double y) {
    return points(heightMm - y);
  }

  Faces faces() {
    return faces;
  }

  void line(double x1, double y1, double x2, double y2, double wide) throws IOException {
    line(x1, y1, x2, y2, wide, new double[0]);
  }

  /** A line; {@code dashes} are lengths of dash and gap in mm. */
  void line(double x1, double y1, double x2, double y2, double wide, double... dashes)
      throws IOException {
    pen(0, wide, dashes);
    out.moveTo(points(x1), down(y1));
    out.lineTo(points(x2), down(y2));
    out.stroke();
  }

  void frame(double x, double y, double wide, double high, double line) throws IOException {
    pen(0, line);
    out.addRect(points(x), down(y + high), points(wide), points(high));
    out.stroke();
  }

  void fill(double x, double y, double wide, double high) throws IOException {
    out.setNonStrokingColor(0f);
    out.addRect(points(x), down(y + high), points(wide), points(high));
    out.fill();
  }

  /** Squares of one size as one filled shape, so that no seams show between them. */
  void squares(List<double[]> corners, double side) throws IOException {
    out.setNonStrokingColor(0f);
    for (double[] corner : corners) {
      out.addRect(points(corner[0]), down(corner[1] + side), points(side), points(side));
    }
    out.fill();
  }

  /** An arrow from its tail to its head. */
  void arrow(double x1, double y1, double x2, double y2, double wide) throws IOException {
    line(x1, y1, x2, y2, wide);
    double angle = Math.atan2(y2 - y1, x2 - x1);
    double barb = Math.max(1.2, Math.hypot(x2 - x1, y2 - y1) / 4);
    for (double turn : new double[] {2.6, -2.6}) {
      line(x2, y2, x2 + barb * Math.cos(angle + turn), y2 + barb * Math.sin(angle + turn), wide);
    }
  }

  /** Shapes drawn with a grey, 0 black to 1 white; null for none. */
  void shape(
      Trace trace, @Nullable Float fill, @Nullable Float stroke, double wide, double... dashes)
      throws IOException {
    if (stroke != null) {
      pen(stroke, wide, dashes);
    }
    if (fill != null) {
      out.setNonStrokingColor(fill);
    }
    trace.along(new Trail());
    if (fill != null && stroke != null) {
      out.fillAndStroke();
    } else if (fill != null) {
      out.fill();
    } else {
      out.stroke();
    }
  }

  /** Draws the outline of a shape. */
  @FunctionalInterface
  interface Trace {
    void along(Trail trail) throws IOException;
  }

  /** A path in mm. */
  final class Trail {
    void to(double x, double y) throws IOException {
      out.moveTo(points(x), down(y));
    }

    void line(double x, double y) throws IOException {
      out.lineTo(points(x), down(y));
    }

    void curve(double x1, double y1, double x2, double y2, double x, double y) throws IOException {
      out.curveTo(points(x1), down(y1), points(x2), down(y2), points(x), down(y));
    }

    void close() throws IOException {
      out.closePath();
    }
  }

  void image(PDImageXObject image, double x, double y, double wide, double high)
      throws IOException {
    out.drawImage(image, points(x), down(y + high), points(wide), points(high));
  }

  /** The width of a text in mm. */
  double width(String text, Type type) throws IOException {
    return mm(faces.width(text, type.bold()) * type.points());
  }

  /** Sets a text with its left end and base line there. */
  void text(double x, double y, String text, Type type) throws IOException {
    grey(text, x, y, type, 0);
  }

  /** Sets a text in a grey, 0 black to 1 white. */
  void grey(String text, double x, double y, Type type, float grey) throws IOException {
    out.setNonStrokingColor(grey);
    double left = x;
    for (SetText each : new SplitText(faces, type.bold()).of(text)) {
      if (each instanceof SetText.Letters letters) {
        out.beginText();
        out.setFont(letters.font(), (float) type.points());
        out.newLineAtOffset(points(left), down(y));
        out.showText(letters.text());
        out.endText();
      } else if (each instanceof SetText.Outline outline) {
        outline(outline, left, y, type.points());
      }
      left += mm(each.width() * type.points());
    }
  }

  void middle(double x, double y, String text, Type type) throws IOException {
    text(x - width(text, type) / 2, y, text, type);
  }

  void end(double x, double y, String text, Type type) throws IOException {
    text(x - width(text, type), y, text, type);
  }

  /** The outline carries its letters along (PDF 32000-1:2008, 14.9.4), for search and copying. */
  private void outline(SetText.Outline text, double x, double y, double size) throws IOException {
    COSDictionary actual = new COSDictionary();
    actual.setString(COSName.ACTUAL_TEXT, text.text());
    out.beginMarkedContent(COSName.getPDFName("Span"), PDPropertyList.create(actual));
    double[] at = new double[6];
    double scale = mm(size);
    Trail trail = new Trail();
    double lastX = 0;
    double lastY = 0;
    for (PathIterator step = text.outline().getPathIterator(null); !step.isDone(); step.next()) {
      int kind = step.currentSegment(at);
      for (int i = 0; i < at.length; i += 2) {
        at[i] = x + at[i] * scale;
        at[i + 1] = y - at[i + 1] * scale;
      }
      switch (kind) {
        case PathIterator.SEG_MOVETO -> trail.to(at[0], at[1]);
        case PathIterator.SEG_LINETO -> trail.line(at[0], at[1]);
        case PathIterator.SEG_QUADTO ->
            trail.curve(
                (lastX + 2 * at[0]) / 3,
                (lastY + 2 * at[1]) / 3,
                (at[2] + 2 * at[0]) / 3,
                (at[3] + 2 * at[1]) / 3,
                at[2],
                at[3]);
        case PathIterator.SEG_CUBICTO -> trail.curve(at[0], at[1], at[2], at[3], at[4], at[5]);
        default -> trail.close();
      }
      int end = kind == PathIterator.SEG_QUADTO ? 2 : kind == PathIterator.SEG_CUBICTO ? 4 : 0;
      lastX = at[end];
      lastY = at[end + 1];
    }
    if (!text.outline().getPathIterator(null).isDone()) {
      out.fill();
    }
    out.endMarkedContent();
  }

  private void pen(float grey, double wide, double... dashes) throws IOException {
    out.setStrokingColor(grey);
    out.setLineWidth(points(Math.max(THIN, wide)));
    float[] pattern = new float[dashes.length];
    for (int i = 0; i < dashes.length; i++) {
      pattern[i] = points(dashes[i]);
    }
    out.setLineDashPattern(pattern, 0);
  }
}
