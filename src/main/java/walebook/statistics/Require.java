package walebook.statistics;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** Argument checks of this room, each naming the argument that is wrong. */
final class Require {
  private Require() {}

  static void some(String name, Counted values) {
    if (values.isEmpty()) {
      throw new IllegalArgumentException(name + " must hold at least one value");
    }
  }

  static double finite(String name, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " must be finite: " + value);
    }
    return value;
  }

  static double confidence(double confidence) {
    if (!(confidence > 0 && confidence < 1)) {
      throw new IllegalArgumentException("confidence must lie between 0 and 1: " + confidence);
    }
    return confidence;
  }

  static double[] values(String name, List<Double> values) {
    if (values.isEmpty()) {
      throw new IllegalArgumentException(name + " must hold at least one value");
    }
    double[] numbers = new double[values.size()];
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] = finite(name + "[" + i + "]", values.get(i));
    }
    return numbers;
  }

  static <T> void distinct(String name, List<T> items, Function<T, String> label) {
    Set<String> seen = new HashSet<>();
    for (T item : items) {
      if (!seen.add(label.apply(item))) {
        throw new IllegalArgumentException(name + " repeats: " + label.apply(item));
      }
    }
  }
}
