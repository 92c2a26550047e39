package walebook.act.classroom;

import java.util.ArrayList;
import java.util.List;
import walebook.compare.Comparison;
import walebook.compare.Factor;
import walebook.words.Words;

/**
 * How a setting reads, on the screen, at the command line and in sentences: its levels in one line,
 * numbers with what they are the number of, what is not noted left out.
 */
public final class SettingWords {
  private static final String BETWEEN = " · ";

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
      return switch (factor) {
        // What the stitch, the machine or the seam hasn't got is not missing from the notes.
        case HEM_METHOD, STABILISER -> words.say("act.class.none", factor(factor));
        // A straight stitch has none; of a zigzag nobody wrote it down.
        case WIDTH -> words.say("act.class.no-width");
        case FEED -> words.say("act.class.no-feed");
        default -> words.say("act.class.no-level", factor(factor));
      };
    }
    return switch (factor) {
      case PRESSURE, WIDTH, LENGTH, FEED, NEEDLE, MACHINE ->
          words.say("act.class.level", factor(factor), value(factor, level));
      default -> value(factor, level);
    };
  }

  /** The same for a column that has the factor's name over it, such as {@code 2.5}. */
  public String value(Factor factor, String level) {
    if (level.isEmpty()) {
      return "–";
    }
    return switch (factor) {
      case GRAIN -> words.say("act.class.grain." + level);
      case PRESSURE -> words.say("common.choice." + level);
      case NEEDLE -> needle(level);
      default -> level;
    };
  }

  /** A point and its size, such as {@code jersey 75}. */
  private String needle(String level) {
    int size = level.lastIndexOf(' ');
    String key = "common.choice." + level.substring(0, Math.max(0, size));
    return size > 0 && words.has(key) ? words.say(key) + level.substring(size) : level;
  }

  /** All levels of a setting; all pieces together when nothing tells them apart. */
  public String setting(List<Factor> factors, List<String> levels) {
    return brief(factors, levels, Integer.MAX_VALUE);
  }

  /** The same with each level cut to so many letters, for a plot's labels. */
  public String brief(List<Factor> factors, List<String> levels, int longest) {
    List<String> shown = new ArrayList<>();
    for (int i = 0; i < levels.size(); i++) {
      if (!levels.get(i).isEmpty()) {
        String level = level(factors.get(i), levels.get(i));
        shown.add(level.length() <= longest ? level : level.substring(0, longest - 1) + "…");
      }
    }
    if (shown.isEmpty() && factors.size() == 1) {
      return level(factors.get(0), "");
    }
    if (shown.isEmpty()) {
      return words.say(levels.isEmpty() ? "act.class.all-pieces" : "act.class.nothing-noted");
    }
    return String.join(BETWEEN, shown);
  }

  /** What is alike in all pieces; empty when nothing is. */
  public String same(List<Comparison.FixedLevel> same) {
    return String.join(
        BETWEEN, same.stream().map(each -> level(each.factor(), each.level())).toList());
  }
}
