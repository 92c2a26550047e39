package walebook.record;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * How a garment will be sewn.
 *
 * @param stitch of its seams
 * @param allowanceMm to the deepest row of stitches; null when it is the pattern's
 * @param trimmed whether what is left of the pattern's allowance is cut off
 * @param sleeve whether a sleeve is set into an armhole with that allowance
 */
public record GarmentSewing(
    StitchChoice stitch, @Nullable Double allowanceMm, boolean trimmed, boolean sleeve) {
  public GarmentSewing {
    Objects.requireNonNull(stitch, "stitch");
    Check.notNegative("allowanceMm", allowanceMm);
  }
}
