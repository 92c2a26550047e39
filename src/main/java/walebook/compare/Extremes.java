package walebook.compare;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import walebook.statistics.Interval;
import walebook.statistics.Proportion;
import walebook.statistics.TwoRates;

/**
 * The settings that held most and least surely. They are picked by the near ends of their Wilson
 * intervals, not by the bare share: two of two says less than nine of ten, and must not win.
 *
 * @param apart true when Fisher's exact test, times the number of pairs that the two were picked
 *     from (Bonferroni), is below 5 %
 */
public record Extremes<T extends SettingFound>(T most, T least, int settings, boolean apart) {
  private static final double LEVEL = 0.05;

  /** Picks them; null when fewer than two settings were pulled. */
  public static <T extends SettingFound> @Nullable Extremes<T> of(List<T> rows) {
    List<T> pulled = rows.stream().filter(row -> row.heldInterval() != null).toList();
    if (pulled.size() < 2) {
      return null;
    }
    T most =
        pulled.stream().max(Comparator.comparingDouble(row -> interval(row).low())).orElseThrow();
    T least =
        pulled.stream()
            .filter(row -> !row.levels().equals(most.levels()))
            .min(Comparator.comparingDouble(row -> interval(row).high()))
            .orElseThrow();
    int pairs = pulled.size() * (pulled.size() - 1) / 2;
    double p = new TwoRates(share(most), share(least)).fisher();
    return new Extremes<>(most, least, pulled.size(), p * pairs < LEVEL);
  }

  /** True when both held in the same share of their pieces. */
  public boolean even() {
    return share(most).share() == share(least).share();
  }

  private static Interval interval(SettingFound row) {
    return Objects.requireNonNull(row.heldInterval());
  }

  private static Proportion share(SettingFound row) {
    return Objects.requireNonNull(row.heldShare());
  }
}
