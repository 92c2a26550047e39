package walebook.compare;

import org.jspecify.annotations.Nullable;
import walebook.cloth.ReadingUncertainty;
import walebook.statistics.Agreement;

/**
 * How much of a difference between two pieces may be nothing but measuring.
 *
 * @param sd standard deviation of one reading, in the outcome's unit
 * @param from where it is known from
 */
public record MeasuringError(double sd, From from) {
  private static final double EDGE_MM = 200;

  /** Where a measuring error is known from. */
  public enum From {
    /** The class's own repeated readings of cloths. */
    REPEATED_READINGS,
    /** A rule read to the millimetre: the least that it can be. */
    RULE
  }

  public MeasuringError {
    if (!(sd > 0 && Double.isFinite(sd))) {
      throw new IllegalArgumentException("sd must be above 0: " + sd);
    }
  }

  /**
   * What is known for an outcome.
   *
   * @param stretchSd repeatability of reading a stretch, in points; null when nobody read twice
   * @param clothStretch mean stretch of the cloths compared, percent; null when not known
   */
  public static @Nullable MeasuringError of(
      Outcome outcome, @Nullable Double stretchSd, @Nullable Double clothStretch) {
    double sd = stretchSd == null ? 0 : stretchSd;
    double cloth = clothStretch == null ? 0 : clothStretch;
    return switch (outcome) {
      case SEAM_STRETCH -> sd > 0 ? new MeasuringError(sd, From.REPEATED_READINGS) : null;
      case SEAM_SHARE ->
          sd > 0 && cloth > 0 ? new MeasuringError(100 * sd / cloth, From.REPEATED_READINGS) : null;
      case EDGE_CHANGE -> new MeasuringError(ofRule(), From.RULE);
      case GRADE, HELD, TIME -> null;
    };
  }

  /** Two readings to the nearest millimetre of an edge of the usual 200 mm. */
  private static double ofRule() {
    double u = ReadingUncertainty.ofResolution(ClothStretch.READ_TO_MM);
    return ReadingUncertainty.ofChange(EDGE_MM, EDGE_MM, u, u);
  }

  /**
   * What two means may differ by through measuring alone, 19 times in 20: {@code 2.8 s_r √((1/n1 +
   * 1/n2)/2)} (ISO 5725-6, for results of one laboratory).
   */
  public double limit(int first, int second) {
    return Agreement.LIMIT * sd * Math.sqrt((1.0 / first + 1.0 / second) / 2);
  }
}
