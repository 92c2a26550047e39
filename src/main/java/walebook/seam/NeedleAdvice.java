package walebook.seam;

import java.util.Objects;

/**
 * A row of the table of needle advice.
 *
 * @param structure of the cloth, or {@code any}
 * @param massFrom the cloth's mass is at least this, g/m²
 * @param massBelow and under this
 * @param elastaneFrom the cloth's elastane is at least this, per cent
 * @param elastaneBelow and under this
 * @param point the needle's point, in plain words
 * @param nmFrom smallest size advised
 * @param nmTo largest size advised
 * @param reason why, as a sentence
 */
public record NeedleAdvice(
    String key,
    String structure,
    double massFrom,
    double massBelow,
    double elastaneFrom,
    double elastaneBelow,
    String point,
    int nmFrom,
    int nmTo,
    String reason,
    String source) {
  /** The structure of rows that hold whatever the cloth's structure. */
  public static final String ANY = "any";

  public NeedleAdvice {
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(structure, "structure");
    Objects.requireNonNull(point, "point");
    Objects.requireNonNull(reason, "reason");
    Objects.requireNonNull(source, "source");
    if (!(massFrom < massBelow) || !(elastaneFrom < elastaneBelow) || nmFrom > nmTo) {
      throw new IllegalArgumentException("ranges must be in order: " + key);
    }
  }

  /** Whether the row speaks of a cloth of this mass and elastane. */
  public boolean covers(double gramsPerM2, double elastanePercent) {
    return gramsPerM2 >= massFrom
        && gramsPerM2 < massBelow
        && elastanePercent >= elastaneFrom
        && elastanePercent < elastaneBelow;
  }
}
