package walebook.book;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.record.By;
import walebook.record.Change;

/** What was changed, by whom, and what it was before. */
public interface History {
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
   * @throws StaleRow when something of it was changed again since
   * @throws IllegalArgumentException when there is no such step, or it was taken back already
   */
  void undo(UUID stepId, By by);
}
