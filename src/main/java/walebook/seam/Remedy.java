package walebook.seam;

import java.util.Objects;

/**
 * One thing to try against a fault.
 *
 * @param says what to try
 * @param factor what it changes
 * @param direction whether it goes up, down or is exchanged
 * @param step how far, such as {@code 0.5 mm}; empty where there is no size
 */
public record Remedy(String says, Factor factor, Direction direction, String step) {

  /** Which way a remedy moves its factor. */
  public enum Direction {
    UP("up"),
    DOWN("down"),
    CHANGE("change");

    private final String key;

    Direction(String key) {
      this.key = key;
    }

    /** The word used in the table. */
    public String key() {
      return key;
    }
  }

  public Remedy {
    Objects.requireNonNull(says, "says");
    Objects.requireNonNull(factor, "factor");
    Objects.requireNonNull(direction, "direction");
    Objects.requireNonNull(step, "step");
  }
}
