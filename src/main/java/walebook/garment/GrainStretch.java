package walebook.garment;

/**
 * How far a cloth stretches in one direction, as measured.
 *
 * @param percent not negative
 * @param uncertainty its standard uncertainty in percentage points, not negative
 */
public record GrainStretch(double percent, double uncertainty) {
  public GrainStretch {
    if (!(percent >= 0 && Double.isFinite(percent))) {
      throw new IllegalArgumentException("percent must not be negative: " + percent);
    }
    if (!(uncertainty >= 0 && Double.isFinite(uncertainty))) {
      throw new IllegalArgumentException("uncertainty must not be negative: " + uncertainty);
    }
  }

  /** U = 2 u, in percentage points (GUM, coverage factor 2). */
  public double expanded() {
    return 2 * uncertainty;
  }
}
