package walebook.act.cloth;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import walebook.cloth.LengthChange;
import walebook.cloth.Recovery;
import walebook.cloth.RecoveryBand;
import walebook.cloth.Repeats;
import walebook.compare.ClothStretch;
import walebook.record.ClothReading;
import walebook.record.Grain;
import walebook.record.Pull;
import walebook.working.Band;

/**
 * What a cloth's readings along one grain come to, from those with the hardest pull, as comparisons
 * of seams use them.
 *
 * @param pull how hard the readings used were pulled
 * @param left how many readings with a gentler pull were left out
 * @param stretch in percent of the gauge length, 95 % interval
 * @param growth in percent of the gauge length; null where no length after release was read
 * @param recovery of the extension in percent; null where it was not read
 * @param band that the mean recovery falls into
 */
public record GrainSummary(
    Grain grain,
    Pull pull,
    int left,
    Repeats.Spread stretch,
    Repeats.@Nullable Spread growth,
    Repeats.@Nullable Spread recovery,
    @Nullable RecoveryBand band) {
  private static final double CONFIDENCE = 95;

  /**
   * Sums up readings along one grain.
   *
   * @param all at least one, all along the grain
   */
  static GrainSummary of(Grain grain, List<ClothReading> all, Pull pull, List<RecoveryBand> bands) {
    List<ClothReading> used =
        all.stream().filter(each -> ClothStretch.pullOf(each) == pull).toList();
    List<Double> stretch = used.stream().map(ClothReading::stretchPercent).toList();
    List<Double> growth =
        used.stream().map(GrainSummary::growthOf).filter(Objects::nonNull).toList();
    List<Double> recovery =
        used.stream().map(GrainSummary::recoveryOf).filter(Objects::nonNull).toList();
    Repeats.Spread back = recovery.isEmpty() ? null : Repeats.spread(recovery, CONFIDENCE);
    return new GrainSummary(
        grain,
        pull,
        all.size() - used.size(),
        Repeats.spread(stretch, CONFIDENCE),
        growth.isEmpty() ? null : Repeats.spread(growth, CONFIDENCE),
        back,
        back == null ? null : Band.holding(bands, back.mean()));
  }

  /** Growth of one reading in percent, or null when it was not released and read. */
  public static @Nullable Double growthOf(ClothReading reading) {
    Double released = reading.releasedMm();
    return released == null ? null : LengthChange.percent(reading.gaugeMm(), released);
  }

  /** Recovery of one reading in percent of its extension, or null when it has none. */
  public static @Nullable Double recoveryOf(ClothReading reading) {
    Double released = reading.releasedMm();
    return released == null || reading.stretchedMm() <= reading.gaugeMm()
        ? null
        : Recovery.ofExtension(reading.gaugeMm(), reading.stretchedMm(), released);
  }
}
