package walebook.garment;

import org.jspecify.annotations.Nullable;

/**
 * A cloth's stretch in both directions; null where it has not been measured.
 *
 * @param wale along the wales
 * @param course along the courses
 */
public record ClothStretch(@Nullable GrainStretch wale, @Nullable GrainStretch course) {

  /** The stretch of one direction, or null. */
  public @Nullable GrainStretch of(GrainRound grain) {
    return grain == GrainRound.WALE ? wale : course;
  }
}
