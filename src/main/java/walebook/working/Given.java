package walebook.working;

import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import org.jspecify.annotations.Nullable;

/**
 * The inputs of one run of a calculation, already read: lengths in mm, percentages as numbers.
 *
 * @param numbers by the input's name
 * @param words choices, by the input's name
 * @param lists readings, by the input's name
 */
public record Given(
    Map<String, Double> numbers, Map<String, String> words, Map<String, List<Double>> lists) {

  public Given {
    numbers = Map.copyOf(numbers);
    words = Map.copyOf(words);
    lists = Map.copyOf(lists);
  }

  /**
   * A number that is there.
   *
   * @throws NoSuchElementException when it is not
   */
  public double number(String name) {
    Double found = numbers.get(name);
    if (found == null) {
      throw new NoSuchElementException("no number: " + name);
    }
    return found;
  }

  /** A number, or null when it was not given. */
  public @Nullable Double numberOrNull(String name) {
    return numbers.get(name);
  }

  /** A whole number that is there. */
  public int whole(String name) {
    return (int) Math.rint(number(name));
  }

  /**
   * The chosen word.
   *
   * @throws NoSuchElementException when there is none
   */
  public String word(String name) {
    String found = words.get(name);
    if (found == null) {
      throw new NoSuchElementException("no choice: " + name);
    }
    return found;
  }

  /** The readings; empty when none were given. */
  public List<Double> list(String name) {
    return lists.getOrDefault(name, List.of());
  }
}
