package walebook.compare;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import walebook.statistics.Interval;
import walebook.statistics.Proportion;
import walebook.statistics.TwoRates;

/**
 * The settings at the two ends: which held most, and which least. They are picked by the near ends
 * of their Wilson intervals, not by the bare share: two of two says less than nine of ten, and must
 * not win. Where these two did not hold in that order, the bare shares pick.
 *
 * @param surely true when the near ends of the intervals picked: none's begins above the most's,
 *     and of all others the least's ends lowest; false when the bare shares did
 * @param even true when all settings held in the same share of their pieces
 * @param apart true when Fisher's exact test, times the number of pairs that the two were picked
 *     from (Bonferroni), is below 5 %
 */
public record Extremes<T extends SettingFound>(
    T most, T least, int settings, boolean surely, boolean even, boolean apart) {
  private static final double LEVEL = 0.05;

  /** Picks them; null when fewer than two settings were pulled. */
  public static <T extends SettingFound> @Nullable Extremes<T> of(List<T> rows) {
    List<T> pulled = rows.stream().filter(row -> row.heldInterval() != null).toList();
    if (pulled.size() < 2) {
      return null;
    }
    Extremes<T> surely =
        picked(pulled, true, row -> interval(row).low(), row -> interval(row).high());
    return share(surely.most).share() > share(surely.least).share()
        ? surely
        : picked(pulled, false, row -> share(row).share(), row -> share(row).share());
  }

  private static <T extends SettingFound> Extremes<T> picked(
      List<T> pulled, boolean surely, ToDoubleFunction<T> up, ToDoubleFunction<T> down) {
    T most = pulled.stream().max(Comparator.comparingDouble(up)).orElseThrow();
    T least =
        pulled.stream()
            .filter(row -> !row.levels().equals(most.levels()))
            .min(Comparator.comparingDouble(down))
            .orElseThrow();
    boolean even = pulled.stream().map(row -> share(row).share()).distinct().count() == 1;
    double p = new TwoRates(share(most), share(least)).fisher();
    return new Extremes<>(
        most, least, pulled.size(), surely, even, p * pairs(pulled.size()) < LEVEL);
  }

  /** How many pairs of settings the two were picked from. */
  public int pairs() {
    return pairs(settings);
  }

  private static int pairs(int settings) {
    return settings * (settings - 1) / 2;
  }

  private static Interval interval(SettingFound row) {
    return Objects.requireNonNull(row.heldInterval());
  }

  private static Proportion share(SettingFound row) {
    return Objects.requireNonNull(row.heldShare());
  }
}
