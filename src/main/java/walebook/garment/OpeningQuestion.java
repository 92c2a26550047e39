package walebook.garment;

import java.util.List;
import walebook.working.Verdict;

/**
 * What is asked of an opening.
 *
 * @param openingMm finished girth of the edge, relaxed, over 0
 * @param overMm the girth that it must pass over, over 0
 * @param marginPoints what it must stretch beyond the demand, percentage points, not negative
 * @param links everything that goes round the edge; at least one
 */
public record OpeningQuestion(
    double openingMm, double overMm, double marginPoints, List<Link> links) {
  public OpeningQuestion {
    if (!(openingMm > 0 && Double.isFinite(openingMm))) {
      throw new IllegalArgumentException("openingMm must be over 0: " + openingMm);
    }
    if (!(overMm > 0 && Double.isFinite(overMm))) {
      throw new IllegalArgumentException("overMm must be over 0: " + overMm);
    }
    if (!(marginPoints >= 0 && Double.isFinite(marginPoints))) {
      throw new IllegalArgumentException("marginPoints must not be negative: " + marginPoints);
    }
    links = Link.best(links);
    if (links.isEmpty()) {
      throw new IllegalArgumentException("an opening has at least its cloth as a link");
    }
  }

  /** How far it must stretch to pass, per cent; 0 when it is large enough as it lies. */
  public double demand() {
    return Ease.wornStrain(overMm, openingMm);
  }

  /** Demand and margin; 0 when nothing has to stretch. */
  public double need() {
    return demand() == 0 ? 0 : demand() + marginPoints;
  }

  /** The smallest opening whose need a capacity meets: P ÷ (1 + (capacity − margin) ÷ 100). */
  public double leastOpening(double capacityPercent) {
    return Ease.leastFinished(overMm, Math.max(0, capacityPercent - marginPoints));
  }

  /** Whether every link is known to reach the demand, with or without the margin. */
  boolean passesBare() {
    double demand = demand();
    return links.stream().allMatch(link -> link.verdict(demand) == Verdict.MET);
  }

  /** Whether something that goes round the edge is reckoned only. */
  boolean isReckoned() {
    return links.stream().anyMatch(link -> link.basis() == Link.Basis.MODEL);
  }
}
