package walebook.record;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A class in a term.
 *
 * @param meets when and where, in the tutor's words
 */
public record SchoolClass(
    UUID id, UUID termId, @Nullable UUID tutorId, String name, String meets, Stamp stamp) {
  public SchoolClass {
    Check.text("name", name);
  }
}
