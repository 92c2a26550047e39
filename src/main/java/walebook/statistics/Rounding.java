package walebook.statistics;

/** Tells scatter from what the rounding of doubles alone makes of equal values. */
final class Rounding {
  private static final double RELATIVE = 1e-12;

  private Rounding() {}

  /** The spread itself, or 0 when it is no more than rounding at values up to {@code size}. */
  static double clean(double spread, double size) {
    return spread <= RELATIVE * size ? 0 : spread;
  }

  /** The greatest size among values from {@code least} to {@code greatest}. */
  static double size(double least, double greatest) {
    return Math.max(Math.abs(least), Math.abs(greatest));
  }
}
