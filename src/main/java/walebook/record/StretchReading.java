package walebook.record;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What comparisons need of a {@link ClothReading} and no more; lengths in mm.
 *
 * @param like what it has alike with others
 * @param measuredBy null when nobody is known to have taken it
 * @param gaugeMm L0, between the marks before stretching
 * @param stretchedMm L1, the same while stretched
 */
public record StretchReading(
    UUID id, Like like, @Nullable UUID measuredBy, double gaugeMm, double stretchedMm) {

  /**
   * What must be the same for readings to be of the same thing; many share one.
   *
   * @param lessonId null for readings outside a lesson
   * @param loadG hung weight where pulled by a load
   */
  public record Like(
      UUID clothId,
      @Nullable UUID lessonId,
      Grain grain,
      @Nullable Fold fold,
      CutEdge edge,
      @Nullable Pull pull,
      @Nullable Double loadG) {}

  public StretchReading {
    Check.positive("gaugeMm", gaugeMm);
    Check.positive("stretchedMm", stretchedMm);
  }

  /** The same of a whole reading. */
  public static StretchReading of(ClothReading whole) {
    How how = whole.how();
    Like like =
        new Like(
            whole.clothId(),
            whole.lessonId(),
            whole.grain(),
            how.fold(),
            whole.edge(),
            how.pull(),
            how.loadG());
    return new StretchReading(
        whole.id(), like, whole.measuredBy(), whole.gaugeMm(), whole.stretchedMm());
  }

  /** Stretch in percent of the gauge length. */
  public double percent() {
    return 100 * (stretchedMm - gaugeMm) / gaugeMm;
  }
}
