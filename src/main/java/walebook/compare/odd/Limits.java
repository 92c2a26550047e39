package walebook.compare.odd;

import walebook.compare.alike.FarOff;
import walebook.record.MarkedValue;

/**
 * Beyond these a value is asked about whatever its like say: rules of ours, wide enough that what
 * lies outside is more often a slip of the pen than a fabric.
 */
final class Limits {
  private static final double MOST_STRETCH = 250;
  private static final double MOST_EDGE = 30;

  private Limits() {}

  /**
   * How far off the middle a value may lie through reading alone, whatever its like say: a stretch
   * is read to about a point, an edge to half of one, a look is a judgement of a grade either way.
   */
  static double readingAlone(MarkedValue value) {
    return switch (value) {
      case SEAM_STRETCH, CLOTH_STRETCH -> FarOff.READING_ALONE;
      case EDGE_CHANGE -> 1.5;
      case GRADE -> 1;
    };
  }

  static boolean beyond(MarkedValue value, double number) {
    return switch (value) {
      case SEAM_STRETCH, CLOTH_STRETCH -> number < 0 || number > MOST_STRETCH;
      case EDGE_CHANGE -> Math.abs(number) > MOST_EDGE;
      case GRADE -> false;
    };
  }
}
