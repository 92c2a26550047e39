package walebook.lesson;

import java.util.List;
import java.util.stream.Collectors;

/** A stretch of text in one style. */
public record Run(String text, Style style) {
  /** How a run stands out. */
  public enum Style {
    PLAIN,
    EMPHASIS,
    STRONG,
    /** As typed on a machine or a screen. */
    TYPED
  }

  /** The words alone. */
  public static String plain(List<Run> runs) {
    return runs.stream().map(Run::text).collect(Collectors.joining());
  }
}
