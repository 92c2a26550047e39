package walebook.statistics;

import java.util.Objects;

/**
 * One value with what may have made it so.
 *
 * @param block whose hands it comes from, or what else is to be allowed for
 * @param level the setting that is compared
 * @param value finite
 */
public record Response(String block, String level, double value) {

  public Response {
    Objects.requireNonNull(block, "block");
    Objects.requireNonNull(level, "level");
    Require.finite("value", value);
  }

  /** Block and level in each other's place. */
  public Response turned() {
    return new Response(/* block= */ level, /* level= */ block, value);
  }
}
