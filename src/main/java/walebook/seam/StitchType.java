package walebook.seam;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A row of the table of stitch types.
 *
 * @param key the row's key: the number where it has one
 * @param number ISO 4915 number; null for a machine's own stretch stitch that has none
 * @param name plain name
 * @param machines kinds that sew it: {@code sewing}, {@code overlocker}, {@code coverstitch},
 *     {@code other}
 * @param needles at least 1
 * @param threads at least 1
 * @param hasWidth whether a width is set
 * @param stretches whether its thread path gives along the seam
 * @param stepsPerSwing needle drops a swing; 1 for all but multi-step zigzags
 */
public record StitchType(
    String key,
    @Nullable Integer number,
    String name,
    List<String> machines,
    int needles,
    int threads,
    boolean hasWidth,
    boolean stretches,
    int stepsPerSwing,
    String source) {
  public StitchType {
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(source, "source");
    machines = List.copyOf(machines);
    if (number != null && (number < 101 || number > 699)) {
      throw new IllegalArgumentException("number must be of ISO 4915, 101 to 699: " + number);
    }
    if (machines.isEmpty() || needles < 1 || threads < 1 || stepsPerSwing < 1) {
      throw new IllegalArgumentException("machines, needles, threads and steps: " + key);
    }
  }
}
