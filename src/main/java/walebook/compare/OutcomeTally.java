package walebook.compare;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import walebook.record.Grain;
import walebook.statistics.Counted;
import walebook.statistics.Moments;

/**
 * What one setting, or several together, have of one outcome.
 *
 * @param exact values that are known
 * @param bounds values of pieces that only held
 * @param hands the known values of every student who has a value; none where all only held
 * @param held how many held, of a seam or a rate
 * @param pieces how many have a value
 * @param setAside how many would have one had the tutor not set it aside
 */
record OutcomeTally(
    Counted exact, Counted bounds, Map<UUID, Moments> hands, int held, int pieces, int setAside) {

  static OutcomeTally of(
      SettingTally tally, Outcome outcome, Map<UUID, Map<Grain, ClothStretch>> stretches) {
    return switch (outcome) {
      case HELD -> rate(tally);
      case SEAM_STRETCH -> seam(tally, 100);
      case SEAM_SHARE -> {
        ClothStretch cloth = CompareBySetting.stretch(stretches, tally.first());
        yield cloth != null && cloth.percent() > 0 ? seam(tally, cloth.percent()) : none();
      }
      case EDGE_CHANGE ->
          plain(
              tally.kept().edge,
              hands(tally, hand -> hand.edge.n() > 0, hand -> hand.edge),
              tally.aside().edge.n());
      case GRADE ->
          plain(
              tally.kept().grade,
              hands(tally, hand -> hand.grade.n() > 0, hand -> hand.grade),
              tally.aside().grade.n());
      case TIME ->
          plain(
              tally.kept().minutes,
              hands(tally, hand -> hand.minutes.n() > 0, hand -> hand.minutes),
              0);
    };
  }

  private static OutcomeTally none() {
    return new OutcomeTally(new Counted(), new Counted(), Map.of(), 0, 0, 0);
  }

  private static OutcomeTally plain(Counted values, Map<UUID, Moments> hands, int aside) {
    return new OutcomeTally(values, new Counted(), hands, 0, values.n(), aside);
  }

  private static OutcomeTally rate(SettingTally tally) {
    return new OutcomeTally(
        new Counted(),
        new Counted(),
        hands(tally, hand -> hand.pulled > 0, hand -> new Moments()),
        tally.kept().endsHeld,
        tally.kept().endsGave + tally.kept().endsHeld,
        tally.aside().endsGave + tally.aside().endsHeld);
  }

  /**
   * Of a seam.
   *
   * @param whole what the stretches are told as percents of, in percent
   */
  private static OutcomeTally seam(SettingTally tally, double whole) {
    SettingTally.Values kept = tally.kept();
    return new OutcomeTally(
        percent(kept.gave, whole),
        percent(kept.held, whole),
        hands(tally, hand -> hand.stretched > 0, hand -> hand.gave.times(100 / whole)),
        kept.held.n(),
        kept.gave.n() + kept.held.n(),
        tally.aside().gave.n() + tally.aside().held.n());
  }

  private static Counted percent(Counted values, double whole) {
    return whole == 100 ? values : values.map(value -> 100 * value / whole);
  }

  private static Map<UUID, Moments> hands(
      SettingTally tally,
      Predicate<SettingTally.Hand> has,
      Function<SettingTally.Hand, Moments> values) {
    Map<UUID, Moments> hands = new LinkedHashMap<>();
    tally
        .hands()
        .forEach(
            (student, hand) -> {
              if (has.test(hand)) {
                hands.put(student, values.apply(hand));
              }
            });
    return hands;
  }

  /** Several settings as one. */
  static OutcomeTally together(List<@Nullable OutcomeTally> all) {
    Counted exact = new Counted();
    Counted bounds = new Counted();
    Map<UUID, Moments> hands = new LinkedHashMap<>();
    int held = 0;
    int pieces = 0;
    int setAside = 0;
    for (OutcomeTally each : all) {
      if (each == null) {
        continue;
      }
      exact.addAll(each.exact);
      bounds.addAll(each.bounds);
      each.hands.forEach(
          (student, values) -> hands.computeIfAbsent(student, key -> new Moments()).addAll(values));
      held += each.held;
      pieces += each.pieces;
      setAside += each.setAside;
    }
    return new OutcomeTally(exact, bounds, hands, held, pieces, setAside);
  }
}
