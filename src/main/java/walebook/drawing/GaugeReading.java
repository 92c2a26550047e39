package walebook.drawing;

import org.jspecify.annotations.Nullable;

/**
 * What is known of a cloth gauge, all lengths in mm; any may be missing.
 *
 * @param start distance between the marks before stretching, L0
 * @param stretched the same while stretched, L1
 * @param how what the stretched length means
 * @param released the same after release and rest, L2
 * @param edgeBefore length of the edge before sewing
 * @param edgeAfter length of the edge after sewing
 */
public record GaugeReading(
    @Nullable Double start,
    @Nullable Double stretched,
    How how,
    @Nullable Double released,
    @Nullable Double edgeBefore,
    @Nullable Double edgeAfter) {

  /** What the stretched length means. */
  public enum How {
    /** Cloth alone, pulled to its comfortable limit. */
    STRETCHED,
    /** The length at which a seam broke. */
    GAVE,
    /** The length to which a seam held, the cloth stopping first. */
    HELD;

    /** The key of its label. */
    public String key() {
      return switch (this) {
        case STRETCHED -> "drawing.gauge.stretched";
        case GAVE -> "drawing.gauge.gave";
        case HELD -> "drawing.gauge.held";
      };
    }
  }

  public GaugeReading {
    check("start", start);
    check("stretched", stretched);
    check("released", released);
    check("edgeBefore", edgeBefore);
    check("edgeAfter", edgeAfter);
  }

  private static void check(String name, @Nullable Double mm) {
    if (mm != null && !(mm > 0 && Double.isFinite(mm))) {
      throw new IllegalArgumentException(name + " must be above 0 mm: " + mm);
    }
  }
}
