package walebook.record;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * One reading of a cloth's stretch along one grain; lengths in mm.
 *
 * @param gaugeMm L0, between the marks before stretching
 * @param stretchedMm L1, the same while stretched
 * @param releasedMm L2, after release and rest; null when not read
 * @param cycle which stretch of the same strip this was, from 1
 */
public record ClothReading(
    UUID id,
    UUID clothId,
    @Nullable UUID classId,
    @Nullable UUID lessonId,
    @Nullable UUID measuredBy,
    Grain grain,
    double gaugeMm,
    double stretchedMm,
    @Nullable Double releasedMm,
    How how,
    CutEdge edge,
    int cycle,
    LocalDate measuredOn,
    String remark,
    Stamp stamp) {
  public ClothReading {
    Check.positive("gaugeMm", gaugeMm);
    Check.positive("stretchedMm", stretchedMm);
    Check.positive("releasedMm", releasedMm);
    Check.within("cycle", cycle, 1, 1000);
  }

  /** Stretch in percent of the gauge length. */
  public double stretchPercent() {
    return 100 * (stretchedMm - gaugeMm) / gaugeMm;
  }
}
