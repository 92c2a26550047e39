package walebook.statistics;

import java.util.Objects;

/**
 * The values that one block has of one level, summed up.
 *
 * @param block whose hands they come from, or what else is to be allowed for
 * @param level the setting that is compared
 * @param values at least one
 */
public record Share(String block, String level, Moments values) {

  public Share {
    Objects.requireNonNull(block, "block");
    Objects.requireNonNull(level, "level");
    if (values.n() == 0) {
      throw new IllegalArgumentException("values must hold at least one value");
    }
  }
}
