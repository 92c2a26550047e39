package walebook.record;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What was measured on a piece; lengths in mm, null when not measured.
 *
 * @param gaugeMm between the marks, relaxed
 * @param edgeBeforeMm the marked edge before sewing
 * @param edgeSewnMm the same after sewing
 * @param edgePressedMm the same after pressing
 * @param pulls each pull along the seam, first to last
 * @param broke what went first where it gave
 * @param releasedMm the gauge after release and rest
 * @param needPercent how far the seam has to stretch, in percent
 * @param sewingMinutes at the machine, threading and turning left out; above 0, up to 600
 */
public record Measure(
    @Nullable Double gaugeMm,
    @Nullable Double edgeBeforeMm,
    @Nullable Double edgeSewnMm,
    @Nullable Double edgePressedMm,
    List<PullReading> pulls,
    @Nullable Broke broke,
    @Nullable Double releasedMm,
    @Nullable Double needPercent,
    How how,
    @Nullable UUID measuredBy,
    @Nullable LocalDate measuredOn,
    @Nullable Double sewingMinutes) {
  /** The longest that sewing a piece can have taken, in minutes. */
  public static final double MOST_MINUTES = 600;

  public Measure {
    Check.positive("gaugeMm", gaugeMm);
    Check.positive("edgeBeforeMm", edgeBeforeMm);
    Check.positive("edgeSewnMm", edgeSewnMm);
    Check.positive("edgePressedMm", edgePressedMm);
    Check.positive("releasedMm", releasedMm);
    Check.notNegative("needPercent", needPercent);
    Check.positive("sewingMinutes", sewingMinutes);
    Check.within("sewingMinutes", sewingMinutes, 0, MOST_MINUTES);
    pulls = List.copyOf(pulls);
    if (!pulls.isEmpty() && gaugeMm == null) {
      throw new IllegalArgumentException("gaugeMm must be known where a seam was pulled");
    }
  }

  /** The same with other pulls. */
  public Measure withPulls(List<PullReading> now) {
    return new Measure(
        gaugeMm,
        edgeBeforeMm,
        edgeSewnMm,
        edgePressedMm,
        now,
        broke,
        releasedMm,
        needPercent,
        how,
        measuredBy,
        measuredOn,
        sewingMinutes);
  }

  /**
   * The pull that speaks for the piece: the shortest at which it gave; where it never gave, the
   * shortest to which it held. The weakest of three is the honest one.
   */
  public @Nullable PullReading counting() {
    Comparator<PullReading> shortest = Comparator.comparingDouble(PullReading::endMm);
    return pulls.stream()
        .filter(each -> each.end() == SeamEnd.GAVE)
        .min(shortest)
        .or(() -> pulls.stream().min(shortest))
        .orElse(null);
  }

  /** Stretch in percent at the counting pull, or null; for a held one a lower bound. */
  public @Nullable Double seamStretchPercent() {
    PullReading pull = counting();
    return pull == null || gaugeMm == null ? null : 100 * (pull.endMm() - gaugeMm) / gaugeMm;
  }

  /** Change of the edge's length in percent, after pressing where that was measured, or null. */
  public @Nullable Double edgeChangePercent() {
    Double after = edgePressedMm == null ? edgeSewnMm : edgePressedMm;
    return after == null || edgeBeforeMm == null
        ? null
        : 100 * (after - edgeBeforeMm) / edgeBeforeMm;
  }
}
