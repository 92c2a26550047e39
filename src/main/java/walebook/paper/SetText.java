package walebook.paper;

import java.awt.geom.Path2D;
import org.apache.pdfbox.pdmodel.font.PDFont;

/** A stretch of text that is set in one way, measured at a size of one point. */
sealed interface SetText {
  String text();

  /** Its width at a size of one point, in points. */
  double width();

  /** Letters set one by one from an embedded typeface. */
  record Letters(String text, PDFont font, double width) implements SetText {}

  /**
   * Letters that change with their neighbours, as their outline.
   *
   * @param outline y upwards, its start at the origin
   */
  record Outline(String text, Path2D outline, double width) implements SetText {}
}
