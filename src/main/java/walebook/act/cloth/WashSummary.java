package walebook.act.cloth;

import java.util.ArrayList;
import java.util.List;
import walebook.cloth.CutLength;
import walebook.cloth.ReadingUncertainty;
import walebook.cloth.Repeats;
import walebook.compare.ClothStretch;
import walebook.record.ClothWash;
import walebook.record.Grain;
import walebook.working.Working;

/**
 * What a cloth's washes come to along one grain; the mean is what a kit is worked out with.
 *
 * @param n how many marked lengths it rests on
 * @param percent mean change, minus is shrinkage
 * @param giveOrTake twice the standard uncertainty of the mean, in points
 */
public record WashSummary(Grain grain, int n, double percent, double giveOrTake) {
  private static final double CONFIDENCE = 95;

  /** One summary for each grain that was washed with marks on it. */
  public static List<WashSummary> of(List<ClothWash> washes) {
    List<WashSummary> all = new ArrayList<>();
    for (Grain grain : LogWash.SQUARE) {
      List<ClothWash> along = washes.stream().filter(each -> each.grain() == grain).toList();
      if (!along.isEmpty()) {
        all.add(of(grain, along));
      }
    }
    return all;
  }

  private static WashSummary of(Grain grain, List<ClothWash> along) {
    Repeats.Spread spread =
        Repeats.spread(along.stream().map(ClothWash::changePercent).toList(), CONFIDENCE);
    double reading = along.stream().mapToDouble(WashSummary::reading).average().orElse(0);
    int n = along.size();
    Double scatter = spread.standardError();
    double u = Math.hypot(reading / Math.sqrt(n), scatter == null ? 0 : scatter);
    return new WashSummary(grain, n, spread.mean(), 2 * u);
  }

  private static double reading(ClothWash wash) {
    double u = ReadingUncertainty.ofResolution(ClothStretch.READ_TO_MM);
    return ReadingUncertainty.ofChange(wash.beforeMm(), wash.afterMm(), u, u);
  }

  /** What to cut so that a length is there after washing, and how that is worked out. */
  public Working cut(double wantedMm) {
    return CutLength.of(wantedMm, percent).value();
  }
}
