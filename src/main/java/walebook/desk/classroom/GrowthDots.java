package walebook.desk.classroom;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import walebook.compare.known.Attempts;
import walebook.compare.known.Growth;
import walebook.drawing.DotPlot;
import walebook.drawing.DotRow;

/**
 * Tries as marks that can be counted: between two piece numbers lies nothing, so a pile too high
 * for its row goes on in a column beside it, those without a good piece in columns of their own.
 */
final class GrowthDots {
  /** What a row of a plot piles up without one mark on another. */
  static final int PILE = 15;

  /** From one column to the next, as a part of the scale. */
  private static final double COLUMN = 0.025;

  private static final double MOST_BESIDE = 0.8;

  private GrowthDots() {}

  /** The highest piece number that a try went to, 2 at least. */
  static int most(Growth growth) {
    return growth.periods().stream()
        .flatMap(period -> period.tries().stream())
        .mapToInt(Attempts::untilGood)
        .reduce(2, Math::max);
  }

  static DotPlot.Span span(int most) {
    return new DotPlot.Span(1, most + 0.2 * (most - 1), true);
  }

  /**
   * A mark for each try.
   *
   * @param most the highest piece number on the scale
   */
  static List<DotRow.Dot> of(List<Attempts> tries, int most) {
    List<DotRow.Dot> dots = new ArrayList<>();
    List<Attempts> sorted =
        tries.stream()
            .sorted(
                Comparator.comparingInt(Attempts::untilGood)
                    .thenComparing(Attempts::good, Comparator.reverseOrder()))
            .toList();
    Attempts before = null;
    int column = 0;
    int piled = 0;
    for (Attempts each : sorted) {
      if (before == null || before.untilGood() != each.untilGood()) {
        column = 0;
        piled = 0;
      } else if (before.good() != each.good() || piled == PILE) {
        column++;
        piled = 0;
      }
      piled++;
      double beside = Math.min(MOST_BESIDE, column * COLUMN * (most - 1));
      dots.add(new DotRow.Dot(each.untilGood() + beside, !each.good()));
      before = each;
    }
    return dots;
  }
}
