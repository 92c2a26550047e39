package walebook.compare;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import walebook.cloth.Recovery;
import walebook.record.ClothReading;

/**
 * How well a cloth went back along one grain, over those readings that were released and rested.
 *
 * @param n how many readings it rests on
 * @param growth mean of G = 100 (L2 − L0) ÷ L0, percent
 * @param recovery mean of R = 100 (L1 − L2) ÷ (L1 − L0), percent; null where no reading stretched
 */
public record ClothReturn(int n, double growth, @Nullable Double recovery) {

  /** Sums up readings of one cloth and grain; null when none was released. */
  public static @Nullable ClothReturn of(List<ClothReading> readings) {
    List<ClothReading> released = readings.stream().filter(r -> r.releasedMm() != null).toList();
    if (released.isEmpty()) {
      return null;
    }
    double growth = released.stream().mapToDouble(ClothReturn::growthOf).average().orElseThrow();
    List<ClothReading> stretched =
        released.stream().filter(r -> r.stretchedMm() > r.gaugeMm()).toList();
    Double recovery =
        stretched.isEmpty()
            ? null
            : Double.valueOf(
                stretched.stream().mapToDouble(ClothReturn::recoveryOf).average().orElseThrow());
    return new ClothReturn(released.size(), growth, recovery);
  }

  private static double growthOf(ClothReading reading) {
    double released = Objects.requireNonNull(reading.releasedMm());
    return 100 * (released - reading.gaugeMm()) / reading.gaugeMm();
  }

  private static double recoveryOf(ClothReading reading) {
    double released = Objects.requireNonNull(reading.releasedMm());
    return Recovery.ofExtension(reading.gaugeMm(), reading.stretchedMm(), released);
  }
}
