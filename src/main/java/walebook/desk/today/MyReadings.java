package walebook.desk.today;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What a student is to measure.
 *
 * @param lines a cloth along a grain each, in the order of measuring: all of the lesson in hand,
 *     and what is open of others
 * @param next the first that is not done, of the lesson in hand before others; null when all are
 */
public record MyReadings(List<Line> lines, @Nullable Next next) {
  static final MyReadings NONE = new MyReadings(List.of(), null);

  public MyReadings {
    lines = List.copyOf(lines);
  }

  /**
   * A cloth along a grain.
   *
   * @param asks cloth and grain in words
   * @param done readings made, of those asked for
   * @param result what they came to in words; empty with none
   */
  public record Line(UUID plannedId, String asks, int done, int of, String result) {
    public boolean isDone() {
      return done >= of;
    }
  }

  /**
   * The next reading.
   *
   * @param inHand whether it is of the lesson in hand
   * @param says each in words, cloth first
   */
  public record Next(UUID plannedId, boolean inHand, List<String> says) {
    public Next {
      says = List.copyOf(says);
    }
  }

  /** Readings made, of those asked for. */
  public int done() {
    return lines.stream().mapToInt(Line::done).sum();
  }

  /** Readings asked for. */
  public int asked() {
    return lines.stream().mapToInt(Line::of).sum();
  }
}
