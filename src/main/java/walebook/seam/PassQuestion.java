package walebook.seam;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What is asked of a stretched seam: per cent throughout, uncertainties in percentage points.
 *
 * @param seamPercent the seam's stretch, or the bound to which it held
 * @param seamUncertainty its standard uncertainty, not negative
 * @param end whether it gave or held
 * @param clothPercent the cloth's stretch in the same direction at the same pull; null if unknown
 * @param clothUncertainty its standard uncertainty; 0 when none is stated
 * @param needPercent a stated need, which then counts instead of the cloth; null if none
 */
public record PassQuestion(
    double seamPercent,
    double seamUncertainty,
    SeamEnd end,
    @Nullable Double clothPercent,
    double clothUncertainty,
    @Nullable Double needPercent) {
  public PassQuestion {
    Objects.requireNonNull(end, "end");
    if (!Double.isFinite(seamPercent)) {
      throw new IllegalArgumentException("seamPercent must be finite: " + seamPercent);
    }
    if (!(seamUncertainty >= 0) || !(clothUncertainty >= 0)) {
      throw new IllegalArgumentException(
          "uncertainties must not be negative: " + seamUncertainty + ", " + clothUncertainty);
    }
  }
}
