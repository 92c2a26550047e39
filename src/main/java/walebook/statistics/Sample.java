package walebook.statistics;

import java.util.List;
import java.util.Objects;

/**
 * The values of one group, such as one person's readings.
 *
 * @param name what the group is called
 * @param values at least one, all finite
 */
public record Sample(String name, List<Double> values) {

  public Sample {
    Objects.requireNonNull(name, "name");
    values = List.copyOf(values);
    Require.values("values of " + name, values);
  }

  /** Mean and spread of the values. */
  public Summary summary() {
    return Summary.of(values);
  }
}
