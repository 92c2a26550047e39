package walebook.garment;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Everything that a garment sheet asks.
 *
 * @param kind what it is
 * @param need the pattern's gauge; null when it has none
 * @param cloth its stretch in both directions
 * @param round which direction goes round
 * @param wear how it is worn
 * @param marginPoints what openings must stretch beyond the demand
 * @param girths the girths it goes round; those of the kind that are missing are asked for
 * @param openings the openings; those of the kind that are missing are asked for
 * @param allowance how the allowance will be sewn; null when it is the pattern's
 * @param bands those on its openings, each opening once
 */
public record GarmentQuestion(
    GarmentKind kind,
    @Nullable GaugeNeed need,
    ClothStretch cloth,
    GrainRound round,
    Wear wear,
    double marginPoints,
    List<GirthPlan> girths,
    List<OpeningPlan> openings,
    @Nullable AllowancePlan allowance,
    List<BandChoice> bands) {
  public GarmentQuestion {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(cloth, "cloth");
    Objects.requireNonNull(round, "round");
    Objects.requireNonNull(wear, "wear");
    girths = List.copyOf(girths);
    openings = List.copyOf(openings);
    bands = List.copyOf(bands);
    if (!(marginPoints >= 0 && Double.isFinite(marginPoints))) {
      throw new IllegalArgumentException("marginPoints must not be negative: " + marginPoints);
    }
  }

  /** The same garment with the other direction going round. */
  public GarmentQuestion turned() {
    return new GarmentQuestion(
        kind, need, cloth, round.other(), wear, marginPoints, girths, openings, allowance, bands);
  }

  /** The stretch of the direction that goes round, or null. */
  public @Nullable GrainStretch stretchRound() {
    return cloth.of(round);
  }

  /** What each edge gains as it will be sewn, in mm. */
  public double edgeGain() {
    return allowance == null ? 0 : allowance.edgeGain();
  }
}
