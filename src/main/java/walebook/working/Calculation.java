package walebook.working;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import walebook.problem.Answer;
import walebook.quantity.Unit;

/**
 * A calculation that can be listed and run by name, on screen or on the command line.
 *
 * @param name short, in plain trade words, such as {@code stretch}
 * @param says what it works out
 * @param inputs what it asks for, in the order it is asked
 * @param work the calculation itself
 */
public record Calculation(
    String name, Message says, List<Input> inputs, Function<Given, Answer<Working>> work) {

  public Calculation {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(says, "says");
    Objects.requireNonNull(work, "work");
    inputs = List.copyOf(inputs);
  }

  /** Runs with inputs already read. */
  public Answer<Working> run(Given given) {
    return work.apply(given);
  }

  /**
   * Reads inputs as typed, all their problems at once.
   *
   * @param typed by the input's name; a blank counts as not given
   * @param usual the unit meant for a length without one
   */
  public Answer<Given> read(Map<String, String> typed, Unit usual) {
    return ReadInputs.of(inputs, typed, usual);
  }

  /**
   * Runs with inputs as typed, all their problems at once.
   *
   * @param typed by the input's name; a blank counts as not given
   * @param usual the unit meant for a length without one
   */
  public Answer<Working> runTyped(Map<String, String> typed, Unit usual) {
    return read(typed, usual).flatMap(work);
  }
}
