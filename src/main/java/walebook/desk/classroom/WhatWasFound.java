package walebook.desk.classroom;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import walebook.compare.Comparison;
import walebook.compare.Extremes;
import walebook.compare.SettingRow;
import walebook.quantity.Show;
import walebook.statistics.Interval;
import walebook.statistics.Proportion;
import walebook.working.Message;

/** What a comparison says in plain words, never more than {@link Extremes} allows. */
final class WhatWasFound {
  private static final double CONFIDENCE = 0.95;

  private WhatWasFound() {}

  static List<Message> of(Comparison comparison, Function<SettingRow, String> setting) {
    List<SettingRow> pulled =
        comparison.rows().stream().filter(row -> row.heldShare() != null).toList();
    List<Message> says = new ArrayList<>();
    if (pulled.isEmpty()) {
      return List.of(Message.of("desk.class.found.none-pulled"));
    }
    Extremes<SettingRow> ends = Extremes.of(pulled, comparison.factors());
    if (ends == null && pulled.size() > 1) {
      says.add(Message.of("desk.class.found.no-pair"));
    } else if (ends == null && share(pulled.get(0)).n() == 1) {
      String one = setting.apply(pulled.get(0));
      boolean held = pulled.get(0).held() == 1;
      says.add(
          held
              ? Message.of("desk.class.found.one-held", one)
              : Message.of("desk.class.found.one-gave", one));
    } else if (ends == null) {
      SettingRow most = pulled.get(0);
      Interval interval = share(most).wilson(CONFIDENCE);
      says.add(
          Message.of(
              "desk.class.found.one",
              setting.apply(most),
              count(most.held()),
              count(share(most).n()),
              percent(interval.low()),
              percent(interval.high())));
    } else {
      says.add(two(ends, setting));
      if (ends.sharing() != null) {
        says.add(ends.sharing());
      }
      oneHand(ends.most(), setting, says);
      oneHand(ends.least(), setting, says);
    }
    if (comparison.mixesCloths()) {
      says.add(Message.of("compare.found.cloths-mixed", count(comparison.cloths())));
    }
    if (comparison.pieces() > comparison.students()) {
      says.add(Message.of("desk.class.found.hands"));
    }
    return says;
  }

  private static Message two(Extremes<SettingRow> ends, Function<SettingRow, String> setting) {
    SettingRow most = ends.most();
    SettingRow least = ends.least();
    return Message.of(
        key(ends),
        setting.apply(most),
        count(most.held()),
        count(share(most).n()),
        setting.apply(least),
        count(least.held()),
        count(share(least).n()),
        count(ends.pairs()));
  }

  /** What was judged is said with it: one pair, or the widest of many. */
  private static String key(Extremes<SettingRow> ends) {
    if (ends.even()) {
      return "desk.class.found.even";
    }
    if (ends.pairs() == 1) {
      return ends.apart() ? "desk.class.found.pair-differs" : "desk.class.found.pair-luck";
    }
    return ends.apart() ? "desk.class.found.differ" : "desk.class.found.luck";
  }

  private static void oneHand(
      SettingRow row, Function<SettingRow, String> setting, List<Message> says) {
    if (row.students() == 1) {
      says.add(Message.of("desk.class.found.one-student", setting.apply(row)));
    }
  }

  private static Proportion share(SettingRow row) {
    return new Proportion(row.held(), row.held() + row.gave());
  }

  private static String count(int number) {
    return Integer.toString(number);
  }

  private static String percent(double share) {
    return Show.fixed(100 * share, 0);
  }
}
