package walebook.record;

import org.jspecify.annotations.Nullable;

/**
 * What a pattern asks of cloth and seams; lengths in mm, null where it says nothing.
 *
 * @param gaugeFromMm length of its gauge before stretching
 * @param gaugeToMm what the cloth must reach, not shorter; both or neither
 * @param allowanceMm seam allowance that the pattern is drawn with
 */
public record PatternAsks(
    @Nullable Double gaugeFromMm, @Nullable Double gaugeToMm, @Nullable Double allowanceMm) {
  /** A pattern that says nothing. */
  public static final PatternAsks NOTHING = new PatternAsks(null, null, null);

  public PatternAsks {
    Check.positive("gaugeFromMm", gaugeFromMm);
    Check.positive("gaugeToMm", gaugeToMm);
    Check.notNegative("allowanceMm", allowanceMm);
    if ((gaugeFromMm == null) != (gaugeToMm == null)) {
      throw new IllegalArgumentException("gaugeFromMm and gaugeToMm belong together");
    }
    if (gaugeFromMm != null && gaugeToMm != null && gaugeToMm < gaugeFromMm) {
      throw new IllegalArgumentException("gaugeToMm must not be shorter: " + gaugeToMm);
    }
  }
}
