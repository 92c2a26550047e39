package walebook.sheet;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.compare.Factor;
import walebook.compare.SettingFound;
import walebook.record.Grain;
import walebook.record.Keyed;
import walebook.record.Step;
import walebook.words.Words;

/** How a combination of levels is called in the table, in the chart and in sentences. */
final class SettingLabel {
  private final List<Factor> factors;
  private final Choices choices;

  SettingLabel(List<Factor> factors, Choices choices) {
    this.factors = List.copyOf(factors);
    this.choices = choices;
  }

  /** All levels in one, such as {@code Grey jersey · course-wise · zigzag · width 2.5}. */
  String of(SettingFound row) {
    return of(row.levels());
  }

  String of(List<String> levels) {
    List<String> shown = new ArrayList<>();
    for (int i = 0; i < levels.size(); i++) {
      String level = level(i, levels);
      if (level != null) {
        shown.add(named(factors.get(i), level));
      }
    }
    if (shown.isEmpty()) {
      return choices
          .words()
          .say(levels.isEmpty() ? "sheet.comparison.all-alike" : "sheet.comparison.not-noted");
    }
    return String.join(" · ", shown);
  }

  /** A number with what it is the number of. */
  private String named(Factor factor, String level) {
    Words words = choices.words();
    return switch (factor) {
      case WIDTH -> words.say("sheet.comparison.width", level);
      case LENGTH -> words.say("sheet.comparison.length", level);
      case FEED -> words.say("sheet.comparison.feed", level);
      default -> level;
    };
  }

  /** The level of one factor as people read it, null where the pieces have none. */
  private @Nullable String level(int factor, List<String> levels) {
    String level = levels.get(factor);
    if (level.isEmpty()) {
      return null;
    }
    return switch (factors.get(factor)) {
      case GRAIN -> choices.grain(Keyed.find(Grain.class, level));
      case PRESSURE -> choices.step(Keyed.find(Step.class, level));
      default -> level;
    };
  }

  /** A level as a number where the factor is one, otherwise as words. */
  Value value(int factor, SettingFound row) {
    String level = level(factor, row.levels());
    return level != null && isNumber(factors.get(factor))
        ? Value.of(Double.valueOf(level))
        : Value.of(level);
  }

  static boolean isNumber(Factor factor) {
    return factor == Factor.WIDTH || factor == Factor.LENGTH || factor == Factor.FEED;
  }
}
