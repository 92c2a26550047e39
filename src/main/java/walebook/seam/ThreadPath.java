package walebook.seam;

import org.jspecify.annotations.Nullable;
import walebook.quantity.Show;

/**
 * Thread per length of seam from the stitch's geometry, all threads together, pure number. T is the
 * thickness of the sewn layers, l the sewn length, w the zigzag's swing or the overedge's width,
 * all in mm; S = 1 ÷ l. Textbook forms (stitch drawn with square corners, one stitch advancing 1 ÷
 * S).
 */
enum ThreadPath {
  T101("101", "C = 3 + 2T ÷ l"),
  T301("301", "C = 2 + 2T ÷ l"),
  T304("304", "C = 2 × √(1 + (w ÷ l)²) + 2T ÷ l"),
  T401("401", "C = 4 + 2T ÷ l"),
  T504("504", "C = 3 + 4w ÷ l + 4T ÷ l");

  private final String stitchType;
  private final String letters;

  ThreadPath(String stitchType, String letters) {
    this.stitchType = stitchType;
    this.letters = letters;
  }

  /** The path of a stitch type, or null where no geometry is kept. */
  static @Nullable ThreadPath of(String stitchType) {
    for (ThreadPath path : values()) {
      if (path.stitchType.equals(stitchType)) {
        return path;
      }
    }
    return null;
  }

  String letters() {
    return letters;
  }

  /** Thread per length of seam. */
  double perSeam(double thickness, double length, double width) {
    double crimp = thickness / length;
    return switch (this) {
      case T101 -> 3 + 2 * crimp;
      case T301 -> 2 + 2 * crimp;
      case T304 -> 2 * Math.hypot(1, width / length) + 2 * crimp;
      case T401 -> 4 + 2 * crimp;
      case T504 -> 3 + 4 * width / length + 4 * crimp;
    };
  }

  /** The formula with numbers and its outcome. */
  String inNumbers(double thickness, double length, double width) {
    String t = Show.upTo(thickness, 2);
    String l = Show.upTo(length, 2);
    String w = Show.upTo(width, 2);
    String outcome = " = " + Show.fixed(perSeam(thickness, length, width), 2);
    return switch (this) {
      case T101 -> "3 + 2 × %s ÷ %s".formatted(t, l) + outcome;
      case T301 -> "2 + 2 × %s ÷ %s".formatted(t, l) + outcome;
      case T304 -> "2 × √(1 + (%s ÷ %s)²) + 2 × %s ÷ %s".formatted(w, l, t, l) + outcome;
      case T401 -> "4 + 2 × %s ÷ %s".formatted(t, l) + outcome;
      case T504 -> "3 + 4 × %s ÷ %s + 4 × %s ÷ %s".formatted(w, l, t, l) + outcome;
    };
  }
}
