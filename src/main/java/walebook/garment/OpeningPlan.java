package walebook.garment;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * An opening of a garment; lengths in mm, null while not known.
 *
 * @param edge which edge
 * @param over what it passes over
 * @param openingMm on its seam line or finished edge as the pattern draws it, over 0
 * @param overMm of the person, over 0
 * @param turn how much it turns in its plane, in radians; 0 for a straight tube
 * @param seams how many seams cross it, 0 or more
 * @param links what goes round it beside the cloth, as evidence was found; the cloth is added
 */
public record OpeningPlan(
    OpeningEdge edge,
    Girth over,
    @Nullable Double openingMm,
    @Nullable Double overMm,
    double turn,
    int seams,
    List<Link> links) {
  public OpeningPlan {
    Objects.requireNonNull(edge, "edge");
    Objects.requireNonNull(over, "over");
    links = List.copyOf(links);
    if ((openingMm != null && !(openingMm > 0)) || (overMm != null && !(overMm > 0))) {
      throw new IllegalArgumentException("opening and girth must be over 0: " + edge.key());
    }
    if (!(turn >= 0 && turn <= 2 * Math.PI) || seams < 0) {
      throw new IllegalArgumentException("turn must be 0 to 2π, seams not negative");
    }
  }

  /**
   * The opening when each edge gains so much: crossing seams widen it, its own curve narrows it.
   */
  public @Nullable Double sewnMm(double edgeGain) {
    if (openingMm == null) {
      return null;
    }
    double sewn = CurvedEdge.neckline(openingMm, edgeGain, turn) + 2 * seams * edgeGain;
    return sewn > 0 ? Double.valueOf(sewn) : null;
  }
}
