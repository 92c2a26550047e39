package walebook.seam;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One thing to try against a fault.
 *
 * @param says what to try
 * @param factor what it changes
 * @param direction whether it goes up, down or is exchanged
 * @param step how far, such as {@code 0.5 mm}; what is taken instead, such as {@code jersey}; for a
 *     stitch its keys with a slash between, the first that the room can sew counting, each with the
 *     width it begins with behind a colon: {@code 304:1/301-twin}; empty where neither is said
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

  /** How far in the factor's unit, or null where the step is not a size. */
  public @Nullable Double size() {
    String number = step.replaceAll(" .*", "");
    return number.matches("[0-9]+(\\.[0-9]+)?") ? Double.valueOf(number) : null;
  }

  /** The stitches that would do, in order; empty for any but a change of stitch. */
  public List<Target> stitches() {
    return factor != Factor.STITCH || step.isEmpty()
        ? List.of()
        : Arrays.stream(step.split("/", -1)).map(Target::of).toList();
  }

  /**
   * A stitch to change to.
   *
   * @param width in mm to begin with; empty when it is left open
   */
  public record Target(String stitch, String width) {
    private static Target of(String written) {
      int colon = written.indexOf(':');
      return colon < 0
          ? new Target(written, "")
          : new Target(written.substring(0, colon), written.substring(colon + 1));
    }
  }
}
