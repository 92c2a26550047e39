package walebook.desk.classroom;

import java.util.ArrayList;
import java.util.List;
import walebook.compare.Comparison;
import walebook.compare.Factor;
import walebook.compare.SettingRow;
import walebook.words.Words;

/** How levels of factors read: numbers with what they are the number of, keys as words. */
final class LevelWords {
  private final Words words;

  LevelWords(Words words) {
    this.words = words;
  }

  String factor(Factor factor) {
    return words.say("desk.class.factor." + factor.key());
  }

  String level(Factor factor, String level) {
    if (level.isEmpty()) {
      return words.say("desk.class.level.none", factor(factor));
    }
    return switch (factor) {
      case GRAIN, PRESSURE -> words.say("desk.class.level." + factor.key(), choice(level));
      case WIDTH, LENGTH, FEED -> words.say("desk.class.level." + factor.key(), level);
      default -> choice(level);
    };
  }

  /** A row's levels in one line; all of them together when there is nothing to tell apart. */
  String setting(Comparison comparison, SettingRow row) {
    List<String> levels = new ArrayList<>();
    for (int i = 0; i < row.levels().size(); i++) {
      if (!row.levels().get(i).isEmpty()) {
        levels.add(level(comparison.factors().get(i), row.levels().get(i)));
      }
    }
    if (levels.isEmpty()) {
      return words.say(
          row.levels().isEmpty() ? "desk.class.all-pieces" : "desk.class.level.nothing");
    }
    return String.join(" · ", levels);
  }

  /** What is the same in all pieces, in one line; empty when nothing is. */
  String same(Comparison comparison) {
    List<String> levels =
        comparison.same().stream().map(each -> level(each.factor(), each.level())).toList();
    return levels.isEmpty() ? "" : words.say("desk.class.same", String.join(" · ", levels));
  }

  private String choice(String level) {
    String key = "common.choice." + level;
    return words.has(key) ? words.say(key) : level;
  }
}
