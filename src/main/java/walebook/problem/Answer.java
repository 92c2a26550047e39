package walebook.problem;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * What came of an input: a value, or every problem that keeps it from being one. Remarks to be
 * confirmed ({@link Problem.Weight#ASK}) may come beside a value.
 *
 * @param <T> the value's type
 */
public sealed interface Answer<T> {

  /** The input was good; {@code asks} holds what is unlikely about it. */
  record Good<T>(T value, List<Problem> asks) implements Answer<T> {
    public Good {
      asks = List.copyOf(asks);
    }
  }

  /** The input was refused, with all its problems at once. */
  record Bad<T>(List<Problem> all) implements Answer<T> {
    public Bad {
      all = List.copyOf(all);
      if (all.isEmpty()) {
        throw new IllegalArgumentException("a refusal names at least one problem");
      }
    }
  }

  static <T> Answer<T> good(T value) {
    return new Good<>(value, List.of());
  }

  static <T> Answer<T> bad(Problem problem) {
    return new Bad<>(List.of(problem));
  }

  static <T> Answer<T> bad(List<Problem> problems) {
    return new Bad<>(problems);
  }

  /** Every problem, whether it refuses or asks. */
  default List<Problem> problems() {
    return this instanceof Bad<T> bad ? bad.all() : ((Good<T>) this).asks();
  }

  default boolean isGood() {
    return this instanceof Good<T>;
  }

  /**
   * The value.
   *
   * @throws IllegalStateException when the input was refused
   */
  default T value() {
    if (this instanceof Good<T> good) {
      return good.value();
    }
    throw new IllegalStateException("refused: " + problems());
  }

  /** The same answer with its value changed; a refusal stays one. */
  default <U> Answer<U> map(Function<T, U> change) {
    return this instanceof Good<T> good
        ? new Good<>(change.apply(good.value()), good.asks())
        : new Bad<>(((Bad<T>) this).all());
  }

  /** Goes on with a step that may itself be refused; remarks of both are kept. */
  default <U> Answer<U> flatMap(Function<T, Answer<U>> next) {
    if (this instanceof Good<T> good) {
      Answer<U> then = next.apply(good.value());
      if (then instanceof Good<U> both) {
        return new Good<>(
            both.value(), Stream.concat(good.asks().stream(), both.asks().stream()).toList());
      }
      return then;
    }
    return new Bad<>(((Bad<T>) this).all());
  }
}
