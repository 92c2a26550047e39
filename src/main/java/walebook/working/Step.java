package walebook.working;

import java.util.Objects;

/**
 * One line on the board: what is worked out, the formula in letters, the same in numbers.
 *
 * @param says what this line works out
 * @param formula in the letters of the trade, such as {@code S = 100 × (L1 − L0) ÷ L0}
 * @param numbers the formula with numbers and its outcome, such as {@code 100 × (150 − 100) ÷ 100 =
 *     50.0 %}
 */
public record Step(Message says, String formula, String numbers) {
  public Step {
    Objects.requireNonNull(says, "says");
    Objects.requireNonNull(formula, "formula");
    Objects.requireNonNull(numbers, "numbers");
  }
}
