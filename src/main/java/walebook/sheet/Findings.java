package walebook.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import walebook.compare.Extremes;
import walebook.compare.SettingFound;
import walebook.compare.TalliedRow;
import walebook.quantity.Show;
import walebook.statistics.Interval;
import walebook.words.Words;
import walebook.working.Message;

/** What the class found, in sentences that say how far they can be trusted. */
final class Findings {
  private Findings() {}

  static List<Message> of(TermFacts facts, Words words) {
    if (facts.pieceCount() == 0) {
      return List.of(Message.of("sheet.found.nothing"));
    }
    TalliedRow all = facts.comparison().all();
    List<Message> found = new ArrayList<>();
    int pulled = all.gave() + all.held();
    found.add(
        Message.of("sheet.found.pulled", n(pulled), n(all.pieces()), n(all.gave()), n(all.held())));
    Interval interval = all.heldInterval();
    if (interval != null) {
      found.add(
          Message.of(
              "sheet.found.share",
              Show.percent(100.0 * all.held() / pulled),
              Show.percent(100 * interval.low()),
              Show.percent(100 * interval.high())));
    }
    var gave = all.stretchOfGave();
    if (gave != null) {
      found.add(
          Message.of(
              "sheet.found.gave",
              Show.percent(gave.median()),
              Show.percent(gave.least()),
              Show.percent(gave.greatest())));
    }
    found.addAll(ends(facts, words));
    if (facts.comparison().setAside() > 0) {
      found.add(Message.of("sheet.found.aside", n(facts.comparison().setAside())));
    }
    if (facts.findings().unseen() > 0) {
      found.add(Message.of("sheet.found.odd", n(facts.findings().unseen())));
    }
    found.add(Message.of("sheet.found.faults", n(all.withFault()), n(all.pieces())));
    found.add(Message.of("sheet.found.care"));
    return found;
  }

  /** The settings that held most and least, how they were picked, and whether that may be luck. */
  private static List<Message> ends(TermFacts facts, Words words) {
    Extremes<TalliedRow> ends =
        Extremes.of(facts.comparison().rows(), facts.comparison().factors());
    if (ends == null) {
      return List.of();
    }
    if (ends.even()) {
      return List.of(Message.of("sheet.found.no-difference"));
    }
    SettingLabel label = new SettingLabel(facts.comparison().factors(), new Choices(words));
    Message sharing = ends.sharing();
    Message luck =
        Message.of(ends.apart() ? "sheet.found.apart" : "sheet.found.may-be-luck", n(ends.pairs()));
    if (sharing != null) {
      return List.of(
          row("sheet.found.more-of-two", label, ends.most()),
          row("sheet.found.less-of-two", label, ends.least()),
          luck,
          sharing);
    }
    return List.of(
        row(ends.surely() ? "sheet.found.most" : "sheet.found.most-share", label, ends.most()),
        row(ends.surely() ? "sheet.found.least" : "sheet.found.least-share", label, ends.least()),
        luck);
  }

  private static Message row(String key, SettingLabel label, SettingFound row) {
    Interval interval = interval(row);
    return Message.of(
        key,
        label.of(row),
        n(row.held()),
        n(row.held() + row.gave()),
        Show.percent(100 * interval.low()),
        Show.percent(100 * interval.high()));
  }

  private static Interval interval(SettingFound row) {
    return Objects.requireNonNull(row.heldInterval());
  }

  private static String n(int count) {
    return String.valueOf(count);
  }
}
