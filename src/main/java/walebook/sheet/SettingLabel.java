package walebook.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.compare.Comparison;
import walebook.compare.Factor;
import walebook.compare.SettingRow;
import walebook.record.Grain;
import walebook.record.Keyed;
import walebook.record.Step;

/** How a combination of levels is called in the table, in the chart and in sentences. */
final class SettingLabel {
  private final Comparison comparison;
  private final Choices choices;

  SettingLabel(Comparison comparison, Choices choices) {
    this.comparison = comparison;
    this.choices = choices;
  }

  /** All levels in one, such as {@code Grey jersey · course-wise · Zigzag · 2.5}. */
  String of(SettingRow row) {
    List<String> shown = new ArrayList<>();
    for (int i = 0; i < row.levels().size(); i++) {
      String level = level(i, row);
      shown.add(level == null ? "–" : level);
    }
    return shown.isEmpty()
        ? choices.words().say("sheet.comparison.all-alike")
        : shown.stream().collect(Collectors.joining(" · "));
  }

  /** The level of one factor as people read it, null where the pieces have none. */
  @Nullable String level(int factor, SettingRow row) {
    String level = row.levels().get(factor);
    if (level.isEmpty()) {
      return null;
    }
    return switch (comparison.factors().get(factor)) {
      case GRAIN -> choices.grain(Keyed.find(Grain.class, level));
      case PRESSURE -> choices.step(Keyed.find(Step.class, level));
      default -> level;
    };
  }

  /** A level as a number where the factor is one, otherwise as words. */
  Value value(int factor, SettingRow row) {
    String level = level(factor, row);
    return level != null && isNumber(comparison.factors().get(factor))
        ? Value.of(Double.valueOf(level))
        : Value.of(level);
  }

  static boolean isNumber(Factor factor) {
    return factor == Factor.WIDTH || factor == Factor.LENGTH || factor == Factor.FEED;
  }
}
