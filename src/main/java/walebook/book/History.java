package walebook.book;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.record.By;
import walebook.record.Change;

/** What was changed, by whom, and what it was before. */
public interface History {
  /** New rows that the history can take back. */
  enum Made {
    /** A test piece with its pulls and faults. */
    PIECE,
    /** A student with their places in classes. */
    STUDENT
  }

  /**
   * Writes down that a row is new, so that its step can be undone; call it in the step that added
   * it, once everything that hangs on it is there.
   */
  void noteNew(Made kind, UUID id, By by, String act, UUID stepId);

  /** The newest changes, newest first, at most so many. */
  List<Change> latest(int limit);

  /** Changes of one row, newest first. */
  List<Change> of(String entity, UUID entityId);

  @Nullable Change find(UUID changeId);

  /** Changes made in one go, in the order they were made. */
  List<Change> step(UUID stepId);

  /**
   * Takes back everything that was done in one go; the taking back is itself a change.
   *
   * @throws StaleRow when something of it was changed again since, or other rows need it by now
   * @throws IllegalArgumentException when there is no such step, or it was taken back already
   */
  void undo(UUID stepId, By by);
}
