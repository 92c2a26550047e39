package walebook.working;

import java.util.List;
import java.util.Objects;

/**
 * A span of values with a name and advice, from {@code from} up to but not including {@code below}.
 */
public interface Band {
  String key();

  double from();

  double below();

  /** True when it holds the value; its lower end belongs to it. */
  default boolean holds(double value) {
    return value >= from() && value < below();
  }

  /**
   * The band that holds a value; beyond the table's ends the band at that end, so that a slip of
   * the keys is answered like any other far value.
   *
   * @throws IllegalArgumentException when the value is no number or there is no band
   */
  static <T extends Band> T holding(List<T> bands, double value) {
    double least = bands.stream().mapToDouble(Band::from).min().orElse(value);
    double most = bands.stream().mapToDouble(Band::below).max().orElse(value);
    double within = Math.max(least, Math.min(Math.nextDown(most), value));
    return bands.stream()
        .filter(band -> band.holds(within))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no band holds " + value));
  }

  /** Checks what every band needs. */
  static void check(String key, double from, double below, String... texts) {
    Objects.requireNonNull(key, "key");
    for (String text : texts) {
      Objects.requireNonNull(text, key);
    }
    if (!(from < below)) {
      throw new IllegalArgumentException("from must be under below: " + key);
    }
  }
}
