package walebook.compare;

import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import walebook.statistics.FiveNumbers;

/**
 * One combination of levels with every piece of it.
 *
 * @param levels one for each factor of the comparison, in its order
 * @param results every piece of the combination
 */
public record SettingRow(List<String> levels, List<PieceResult> results) implements SettingFound {

  public SettingRow {
    levels = List.copyOf(levels);
    results = List.copyOf(results);
  }

  @Override
  public int pieces() {
    return results.size();
  }

  @Override
  public int students() {
    return (int) results.stream().map(PieceResult::studentId).distinct().count();
  }

  @Override
  public int gave() {
    return (int) results.stream().filter(PieceResult::gave).count();
  }

  @Override
  public int held() {
    return (int) results.stream().filter(PieceResult::held).count();
  }

  @Override
  public @Nullable FiveNumbers stretchOfGave() {
    return spread(PieceResult::gave, PieceResult::seamStretch);
  }

  @Override
  public @Nullable FiveNumbers shareOfGave() {
    return spread(PieceResult::gave, PieceResult::seamShare);
  }

  @Override
  public @Nullable FiveNumbers edgeChange() {
    return spread(each -> true, PieceResult::edgeChange);
  }

  @Override
  public @Nullable FiveNumbers grade() {
    return spread(each -> true, each -> each.grade() == null ? null : Double.valueOf(each.grade()));
  }

  @Override
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
