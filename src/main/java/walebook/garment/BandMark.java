package walebook.garment;

/**
 * A mark on a band and the place on the opening that it is matched to, both in mm from where the
 * marking begins.
 */
public record BandMark(double openingMm, double bandMm) {
  public BandMark {
    if (!(openingMm >= 0 && bandMm >= 0 && Double.isFinite(openingMm + bandMm))) {
      throw new IllegalArgumentException("marks must not be negative");
    }
  }
}
