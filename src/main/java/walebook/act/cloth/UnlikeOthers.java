package walebook.act.cloth;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Show;
import walebook.record.ClothReading;
import walebook.record.Grain;
import walebook.record.Pull;

/** Asks about a reading that lies far from what the book holds of its cloth and grain. */
final class UnlikeOthers {
  /** With fewer there is nothing to be unlike. */
  private static final int ENOUGH = 3;

  /** Common practice: people who pull alike differ by less, in points. */
  private static final double USUAL_POINTS = 5;

  /** So near the mean of another grain it may be one of that grain, in points. */
  private static final double NEAR_POINTS = 3;

  private UnlikeOthers() {}

  /**
   * Looks at one reading.
   *
   * @param before the cloth's readings that the book holds
   * @return the question, or null where it lies no farther off than the others lie from each other
   */
  static @Nullable Problem asked(ClothReading reading, List<ClothReading> before) {
    Pull pull = pull(reading);
    Map<Grain, DoubleSummaryStatistics> known =
        before.stream()
            .filter(each -> pull(each) == pull)
            .collect(
                Collectors.groupingBy(
                    ClothReading::grain,
                    Collectors.summarizingDouble(ClothReading::stretchPercent)));
    DoubleSummaryStatistics same = known.get(reading.grain());
    double percent = reading.stretchPercent();
    if (same == null || same.getCount() < ENOUGH || !isFar(percent, same)) {
      return null;
    }
    for (Map.Entry<Grain, DoubleSummaryStatistics> each : known.entrySet()) {
      DoubleSummaryStatistics other = each.getValue();
      if (each.getKey() != reading.grain()
          && other.getCount() >= ENOUGH
          && Math.abs(percent - other.getAverage()) <= NEAR_POINTS) {
        return ask("grain", "reading.other-grain", percent, other);
      }
    }
    return ask("stretched", "reading.unlike-others", percent, same);
  }

  private static boolean isFar(double percent, DoubleSummaryStatistics known) {
    double usual = Math.max(USUAL_POINTS, known.getMax() - known.getMin());
    return percent > known.getMax() + usual || percent < known.getMin() - usual;
  }

  private static Problem ask(
      String field, String code, double percent, DoubleSummaryStatistics known) {
    String range = Show.fixed(known.getMin(), 1) + "–" + Show.percent(known.getMax());
    return Problem.ask(code, Place.field(field), Show.percent(percent), range);
  }

  private static Pull pull(ClothReading reading) {
    return Objects.requireNonNullElse(reading.how().pull(), Pull.COMFORTABLE);
  }
}
