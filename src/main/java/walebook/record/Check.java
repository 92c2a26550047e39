package walebook.record;

import org.jspecify.annotations.Nullable;

/** Argument checks that name the argument which is wrong. */
final class Check {
  private Check() {}

  static String text(String name, String value) {
    if (value.isBlank()) {
      throw new IllegalArgumentException(name + " must not be blank");
    }
    return value;
  }

  static void positive(String name, @Nullable Double value) {
    if (value != null && !(value > 0 && Double.isFinite(value))) {
      throw new IllegalArgumentException(name + " must be above 0: " + value);
    }
  }

  static void notNegative(String name, @Nullable Double value) {
    if (value != null && !(value >= 0 && Double.isFinite(value))) {
      throw new IllegalArgumentException(name + " must not be negative: " + value);
    }
  }

  static void within(String name, @Nullable Number value, double least, double most) {
    if (value != null && !(value.doubleValue() >= least && value.doubleValue() <= most)) {
      throw new IllegalArgumentException(
          name + " must lie within " + least + " and " + most + ": " + value);
    }
  }
}
