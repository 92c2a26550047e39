package walebook.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import walebook.statistics.Interval;
import walebook.statistics.Proportion;
import walebook.statistics.TwoRates;
import walebook.working.Message;

/**
 * The settings at the two ends, of those that can be compared: which held most, and which least.
 * They are picked by the near ends of their Wilson intervals, not by the bare share: two of two
 * says less than nine of ten, and must not win. Where these two did not hold in that order, the
 * bare shares pick.
 *
 * @param surely true when the near ends of the intervals picked: of all that it is compared with
 *     none's begins above the most's, and the least's ends lowest; false when the bare shares did
 * @param even true when all settings held in the same share of their pieces
 * @param apart true when Fisher's exact test, times the number of pairs that the two were picked
 *     from (Bonferroni), is below 5 %
 * @param pairs of settings that the two were picked from
 * @param within what both of a pair share, so that not every two settings were among these; else
 *     empty
 */
public record Extremes<T extends SettingFound>(
    T most, T least, boolean surely, boolean even, boolean apart, int pairs, List<Factor> within) {
  private static final double LEVEL = 0.05;

  public Extremes {
    within = List.copyOf(within);
  }

  private record Two<T extends SettingFound>(T most, T least) {
    private double by(ToDoubleFunction<T> up, ToDoubleFunction<T> down) {
      return up.applyAsDouble(most) - down.applyAsDouble(least);
    }
  }

  /**
   * Picks them; null when no two settings that can be compared were pulled.
   *
   * @param factors what rows are told apart by: where the cloth is among others, both of a pair lie
   *     on the same
   */
  public static <T extends SettingFound> @Nullable Extremes<T> of(
      List<T> rows, List<Factor> factors) {
    List<T> pulled = rows.stream().filter(row -> row.heldInterval() != null).toList();
    Ground ground = new Ground(factors);
    List<Two<T>> either = new ArrayList<>();
    for (T one : pulled) {
      for (T other : pulled) {
        if (one != other && ground.compares(one.levels(), other.levels())) {
          either.add(new Two<>(one, other));
        }
      }
    }
    if (either.isEmpty()) {
      return null;
    }
    Two<T> surely = picked(either, row -> interval(row).low(), row -> interval(row).high());
    boolean inOrder =
        share(surely.most).share() > share(surely.least).share() && isFurthest(surely, either);
    Two<T> two =
        inOrder ? surely : picked(either, row -> share(row).share(), row -> share(row).share());
    boolean even = pulled.stream().map(row -> share(row).share()).distinct().count() == 1;
    int pairs = either.size() / 2;
    double p = new TwoRates(share(two.most), share(two.least)).fisher();
    boolean all = pairs == pulled.size() * (pulled.size() - 1) / 2;
    return new Extremes<>(
        two.most,
        two.least,
        inOrder,
        even,
        p * pairs < LEVEL,
        pairs,
        all ? List.of() : ground.shared());
  }

  private static <T extends SettingFound> Two<T> picked(
      List<Two<T>> either, ToDoubleFunction<T> up, ToDoubleFunction<T> down) {
    Two<T> furthest = either.get(0);
    for (Two<T> two : either) {
      furthest = two.by(up, down) > furthest.by(up, down) ? two : furthest;
    }
    return furthest;
  }

  /** True when, of all that is compared with the most, none begins higher or ends lower. */
  private static <T extends SettingFound> boolean isFurthest(Two<T> two, List<Two<T>> either) {
    double begins = interval(two.most).low();
    double ends = interval(two.least).high();
    return either.stream()
        .filter(each -> each.most == two.most)
        .map(each -> interval(each.least))
        .noneMatch(other -> other.low() > begins || other.high() < ends);
  }

  /** Which settings are not compared with each other; null where every two are. */
  public @Nullable Message sharing() {
    return within.isEmpty() ? null : Wording.within(within);
  }

  private static Interval interval(SettingFound row) {
    return Objects.requireNonNull(row.heldInterval());
  }

  private static Proportion share(SettingFound row) {
    return Objects.requireNonNull(row.heldShare());
  }
}
