package walebook.desk.common;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One line about what has just happened.
 *
 * @param says the sentence, already worded
 * @param undo takes it back; null when that cannot be
 */
public record Notice(String says, @Nullable Runnable undo) {
  /** Nothing to say. */
  public static final Notice NONE = new Notice("", null);

  public Notice {
    Objects.requireNonNull(says, "says");
  }
}
