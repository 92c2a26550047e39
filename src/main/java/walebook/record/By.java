package walebook.record;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Who made a change.
 *
 * @param name as shown; empty when nobody said
 */
public record By(String name, @Nullable UUID studentId, @Nullable UUID tutorId) {
  public static final By NOBODY = new By("", null, null);

  /** A person by name alone. */
  public static By named(String name) {
    return new By(name, null, null);
  }
}
