package walebook.garment;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A band that was chosen for an opening.
 *
 * @param edge which opening
 * @param plan its measures
 * @param place where it sits
 * @param turn the opening's turn in radians
 * @param stretch of its cloth along the band; null while not measured
 * @param over what it passes over
 * @param overMm of the person; null while not known
 */
public record BandChoice(
    OpeningEdge edge,
    BandPlan plan,
    BandRatio.Place place,
    double turn,
    @Nullable GrainStretch stretch,
    Girth over,
    @Nullable Double overMm) {
  public BandChoice {
    Objects.requireNonNull(edge, "edge");
    Objects.requireNonNull(plan, "plan");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(over, "over");
    if (!(turn >= 0 && turn <= 2 * Math.PI)) {
      throw new IllegalArgumentException("turn must be 0 to 2π: " + turn);
    }
  }
}
