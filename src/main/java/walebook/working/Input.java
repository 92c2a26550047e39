package walebook.working;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One thing a calculation asks for.
 *
 * @param name as an option of the command line, such as {@code gauge}
 * @param kind how it is read
 * @param required whether it must be given
 * @param usual what is taken when it is not given, as it would be typed; null for nothing
 * @param choices the words allowed for {@link Kind#CHOICE}; empty otherwise
 * @param says what it is
 */
public record Input(
    String name,
    Kind kind,
    boolean required,
    @Nullable String usual,
    List<String> choices,
    Message says) {

  /** How an input is read. */
  public enum Kind {
    /** Inside in mm; typed in the user's unit or with a unit behind. */
    LENGTH,
    PERCENT,
    NUMBER,
    WHOLE,
    CHOICE,
    /** Several numbers with semicolons between them. */
    NUMBERS,
    /** Several lengths with semicolons between them. */
    LENGTHS
  }

  public Input {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(says, "says");
    choices = List.copyOf(choices);
    if (required && usual != null) {
      throw new IllegalArgumentException("a required input has no usual value: " + name);
    }
    if ((kind == Kind.CHOICE) == choices.isEmpty()) {
      throw new IllegalArgumentException("choices belong to a choice: " + name);
    }
  }

  /** An input that must be given. */
  public static Input required(String name, Kind kind, Message says) {
    return new Input(name, kind, true, null, List.of(), says);
  }

  /** An input that may be left out, with what is then taken. */
  public static Input usual(String name, Kind kind, String usual, Message says) {
    return new Input(name, kind, false, usual, List.of(), says);
  }

  /** An input that may be left out and then is not there. */
  public static Input optional(String name, Kind kind, Message says) {
    return new Input(name, kind, false, null, List.of(), says);
  }

  /** A choice of words; the first one is taken when none is given. */
  public static Input choice(String name, List<String> choices, Message says) {
    return new Input(name, Kind.CHOICE, false, choices.get(0), choices, says);
  }
}
