package walebook.garment;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A girth that a garment goes round; lengths in mm, null while not known.
 *
 * @param girth which
 * @param bodyMm of the person, over 0
 * @param finishedMm of the garment as the pattern draws it, over 0
 * @param seams how many seams cross it, 0 or more
 */
public record GirthPlan(
    Girth girth, @Nullable Double bodyMm, @Nullable Double finishedMm, int seams) {
  public GirthPlan {
    Objects.requireNonNull(girth, "girth");
    if ((bodyMm != null && !(bodyMm > 0)) || (finishedMm != null && !(finishedMm > 0))) {
      throw new IllegalArgumentException("girths must be over 0: " + girth.key());
    }
    if (seams < 0) {
      throw new IllegalArgumentException("seams must not be negative: " + seams);
    }
  }

  /** The finished girth when each edge gains so much; null while not known or when none is left. */
  public @Nullable Double sewnMm(double edgeGain) {
    return finishedMm == null || finishedMm + 2 * seams * edgeGain <= 0
        ? null
        : Double.valueOf(finishedMm + 2 * seams * edgeGain);
  }
}
