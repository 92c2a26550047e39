package walebook.act.demo;

import walebook.record.Step;
import walebook.seam.Zigzag;

/**
 * How the demo's seams behave: lockstitches by the geometry of their thread path, other stitches by
 * a figure of their own. Invented figures of a believable size, for the demo alone.
 */
final class DemoSeam {
  private static final double THREAD_STRETCH = 9;
  private static final double TAKE_UP = 0.3;
  private static final double USUAL_LENGTH = 2.5;

  private DemoSeam() {}

  /** Stretch in percent at which the seam gives, before hands and machine have their say. */
  static double givesAt(String stitch, double widthMm, double lengthMm, DemoCloth cloth) {
    double takeUp = TAKE_UP * 2 * cloth.thicknessMm();
    return switch (stitch) {
      case "301" -> Zigzag.plain(0, lengthMm).extensionPercent(takeUp, THREAD_STRETCH);
      case "304" -> Zigzag.plain(widthMm, lengthMm).extensionPercent(takeUp, THREAD_STRETCH);
      case "three-step" ->
          new Zigzag(widthMm, lengthMm, 3).extensionPercent(2 * takeUp, THREAD_STRETCH);
      case "triple-straight" -> 62;
      case "overlock-look" -> 95;
      case "301-twin" -> 44;
      case "406" -> 88;
      case "503" -> 165;
      case "504" -> 150;
      default -> 130;
    };
  }

  /** Change of the edge's length in percent: presser foot, dense stitches and stretchy cloth. */
  static double edgeChange(DemoCloth cloth, double stretch, Step pressure, double lengthMm) {
    double foot =
        switch (pressure) {
          case LOWER -> 0.6;
          case NORMAL -> 2.4;
          case HIGHER -> 6.2;
        };
    double dense = Math.max(0, USUAL_LENGTH - lengthMm) * 1.4;
    return foot * (0.5 + stretch / 100) + dense - cloth.thicknessMm();
  }

  /** What the differential feed takes off the edge's growth, in points. */
  static double eased(double feed) {
    return (feed - 1) * 9 - 2.5;
  }
}
