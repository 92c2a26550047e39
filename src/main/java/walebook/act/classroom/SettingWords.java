package walebook.act.classroom;

import java.util.ArrayList;
import java.util.List;
import walebook.compare.Factor;
import walebook.words.Words;

/** How a setting reads: its levels in one line, numbers with what they are the number of. */
public final class SettingWords {
  private final Words words;

  public SettingWords(Words words) {
    this.words = words;
  }

  public String factor(Factor factor) {
    return words.say("act.class.factor." + factor.key());
  }

  /** One level of a factor, such as {@code width 2.5}. */
  public String level(Factor factor, String level) {
    if (level.isEmpty()) {
      return words.say("act.class.no-level", factor(factor));
    }
    String key = "common.choice." + level;
    String plain = words.has(key) ? words.say(key) : level;
    return switch (factor) {
      case GRAIN -> words.say("act.class.grain." + level);
      case PRESSURE, WIDTH, LENGTH, FEED, NEEDLE, MACHINE ->
          words.say("act.class.level", factor(factor), plain);
      default -> plain;
    };
  }

  /** All levels of a setting; all pieces together when nothing tells them apart. */
  public String setting(List<Factor> factors, List<String> levels) {
    List<String> shown = new ArrayList<>();
    for (int i = 0; i < levels.size(); i++) {
      shown.add(level(factors.get(i), levels.get(i)));
    }
    return shown.isEmpty() ? words.say("act.class.all-pieces") : String.join(" · ", shown);
  }
}
