package walebook.compare;

import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import walebook.statistics.FiveNumbers;
import walebook.statistics.Interval;
import walebook.statistics.Proportion;

/**
 * One combination of levels with everything that was found of it. Gave and held are kept apart: a
 * held piece counts as a lower bound and never goes into a median.
 *
 * @param levels one for each factor of the comparison, in its order
 * @param results every piece of the combination
 */
public record SettingRow(List<String> levels, List<PieceResult> results) {
  /** A fault of this severity is seen at arm's length. */
  private static final int SEEN_AT_ARMS_LENGTH = 2;

  public SettingRow {
    levels = List.copyOf(levels);
    results = List.copyOf(results);
  }

  public int pieces() {
    return results.size();
  }

  /** How many different students sewed it. */
  public int students() {
    return (int) results.stream().map(PieceResult::studentId).distinct().count();
  }

  public int gave() {
    return (int) results.stream().filter(PieceResult::gave).count();
  }

  public int held() {
    return (int) results.stream().filter(PieceResult::held).count();
  }

  /** The share of pulled pieces that held, as count and n, or null when none was pulled. */
  public @Nullable Proportion heldShare() {
    int pulled = gave() + held();
    return pulled == 0 ? null : new Proportion(held(), pulled);
  }

  /** Wilson's 95 % interval of the share that held, as fractions, or null. */
  public @Nullable Interval heldInterval() {
    Proportion share = heldShare();
    return share == null ? null : share.wilson(0.95);
  }

  /** Seam stretch in percent of those that gave, or null when none did. */
  public @Nullable FiveNumbers stretchOfGave() {
    return spread(PieceResult::gave, PieceResult::seamStretch);
  }

  /** Seam share in percent of those that gave, or null. */
  public @Nullable FiveNumbers shareOfGave() {
    return spread(PieceResult::gave, PieceResult::seamShare);
  }

  /** Edge change in percent of all that were measured, or null. */
  public @Nullable FiveNumbers edgeChange() {
    return spread(each -> true, PieceResult::edgeChange);
  }

  /** Appearance grade of all that were graded, or null. */
  public @Nullable FiveNumbers grade() {
    return spread(each -> true, each -> each.grade() == null ? null : Double.valueOf(each.grade()));
  }

  /** How many show a fault that is seen at arm's length. */
  public int withFault() {
    return (int) results.stream().filter(each -> each.worstFault() >= SEEN_AT_ARMS_LENGTH).count();
  }

  private @Nullable FiveNumbers spread(
      java.util.function.Predicate<PieceResult> which,
      Function<PieceResult, @Nullable Double> value) {
    List<Double> values =
        results.stream().filter(which).map(value).filter(Objects::nonNull).toList();
    return values.isEmpty() ? null : FiveNumbers.of(values);
  }
}
