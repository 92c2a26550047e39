package walebook.working;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import walebook.quantity.Measured;

/**
 * A calculation's answer with everything needed to follow it; the same working feeds the screen,
 * the command line, the spreadsheet and paper.
 *
 * @param name the calculation's name, also its name on the command line, such as {@code stretch}
 * @param title what was worked out
 * @param result the value with unit and uncertainty; null when it is not defined or not known
 * @param verdict null when no verdict was asked for
 * @param says the answer as a sentence, also when there is no value
 * @param steps in the order a teacher would write them
 * @param assumptions what was taken for granted
 * @param cautions what can hurt someone
 * @param sources where the formula and the figures come from; at least one
 */
public record Working(
    String name,
    Message title,
    @Nullable Measured result,
    @Nullable Verdict verdict,
    Message says,
    List<Step> steps,
    List<Message> assumptions,
    List<Caution> cautions,
    List<Source> sources) {

  public Working {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(says, "says");
    steps = List.copyOf(steps);
    assumptions = List.copyOf(assumptions);
    cautions = List.copyOf(cautions);
    sources = List.copyOf(sources);
    if (sources.isEmpty()) {
      throw new IllegalArgumentException("a working names its source: " + name);
    }
  }

  /**
   * The value alone.
   *
   * @throws IllegalStateException when there is none
   */
  public double value() {
    if (result == null) {
      throw new IllegalStateException("no value: " + name + " " + says.key());
    }
    return result.value();
  }

  /** Starts a working; the rest is added line by line. */
  public static WorkingBuilder named(String name, Message title) {
    return new WorkingBuilder(name, title);
  }
}
