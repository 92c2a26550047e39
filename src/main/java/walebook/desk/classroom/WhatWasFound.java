package walebook.desk.classroom;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import walebook.compare.Comparison;
import walebook.compare.SettingRow;
import walebook.quantity.Show;
import walebook.statistics.Interval;
import walebook.statistics.Proportion;
import walebook.statistics.TwoRates;
import walebook.working.Message;

/**
 * What a comparison says in plain words. Two settings are called different only when Fisher's exact
 * test says so at 5 % after Bonferroni's allowance for having picked the two extremes out of every
 * pair in the table.
 */
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
    Comparator<SettingRow> byShare =
        Comparator.comparingDouble((SettingRow row) -> share(row).share());
    SettingRow most =
        pulled.stream().max(byShare.thenComparingInt(SettingRow::pieces)).orElse(pulled.get(0));
    SettingRow least =
        pulled.stream()
            .min(byShare.thenComparing(SettingRow::pieces, Comparator.reverseOrder()))
            .orElse(pulled.get(0));
    if (pulled.size() == 1) {
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
      says.add(two(most, least, pulled.size(), setting));
      oneHand(most, setting, says);
      oneHand(least, setting, says);
    }
    if (comparison.pieces() > comparison.students()) {
      says.add(Message.of("desk.class.found.hands"));
    }
    return says;
  }

  private static Message two(
      SettingRow most, SettingRow least, int rows, Function<SettingRow, String> setting) {
    return Message.of(
        key(share(most), share(least), rows),
        setting.apply(most),
        count(most.held()),
        count(share(most).n()),
        setting.apply(least),
        count(least.held()),
        count(share(least).n()));
  }

  private static String key(Proportion most, Proportion least, int rows) {
    if (most.share() == least.share()) {
      return "desk.class.found.even";
    }
    int pairs = rows * (rows - 1) / 2;
    return new TwoRates(most, least).fisher() * pairs < 1 - CONFIDENCE
        ? "desk.class.found.differ"
        : "desk.class.found.luck";
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
