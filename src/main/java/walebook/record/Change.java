package walebook.record;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * One change in the book's history.
 *
 * @param stepId shared by changes made in one go, which are undone together
 * @param act what was done, such as {@code piece.correct}
 * @param entity the table
 * @param before the row as JSON; null for a new one, or one that came back
 * @param after the row as JSON; null for one taken away, and for a new one as well, since what that
 *     held stands in the book or in the next change
 * @param undone true when it was taken back later
 */
public record Change(
    UUID id,
    UUID stepId,
    Instant doneAt,
    By by,
    String act,
    String entity,
    UUID entityId,
    @Nullable String before,
    @Nullable String after,
    boolean undone) {

  /** Whether a row was added. */
  public boolean isNew() {
    return before == null && after == null;
  }
}
