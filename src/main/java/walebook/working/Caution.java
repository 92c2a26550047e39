package walebook.working;

import java.util.Objects;

/**
 * A warning shown where the hazard is.
 *
 * @param key its row in the table of cautions, such as {@code needle-change}
 * @param says the sentence
 */
public record Caution(String key, Message says) {
  public Caution {
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(says, "says");
  }
}
