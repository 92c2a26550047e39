package walebook.cloth;

/** Mass per unit area in its two units, and what a running metre weighs. */
public final class AreaMass {
  /**
   * One ounce a square yard in g/m²: 28.349523125 g (avoirdupois ounce) ÷ 0.83612736 m² (square of
   * 0.9144 m), both exact by the international yard and pound agreement of 1959.
   */
  public static final double OUNCE_PER_SQUARE_YARD = 28.349523125 / 0.83612736;

  private AreaMass() {}

  /** Mass of a swatch over its area: m in g, a and b in mm, outcome in g/m². */
  public static double ofSwatch(double massG, double aMm, double bMm) {
    return massG / (aMm * bMm) * 1_000_000;
  }

  /** g/m² to oz/yd². */
  public static double toOunces(double gramsPerM2) {
    return gramsPerM2 / OUNCE_PER_SQUARE_YARD;
  }

  /** oz/yd² to g/m². */
  public static double fromOunces(double ouncesPerYd2) {
    return ouncesPerYd2 * OUNCE_PER_SQUARE_YARD;
  }

  /** Mass of one metre's length in g, of a cloth so wide (mm). */
  public static double runningMetre(double gramsPerM2, double widthMm) {
    return gramsPerM2 * widthMm / 1000;
  }

  /**
   * Ounces of a running yard to g/m², of a cloth so wide (mm): the yard's area is width × 0.9144.
   */
  public static double fromRunningYard(double ounces, double widthMm) {
    return ounces * 28.349523125 / (widthMm / 1000 * 0.9144);
  }
}
