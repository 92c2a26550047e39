package walebook.book;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.record.By;
import walebook.record.Change;
import walebook.record.TestPiece;

/**
 * What was changed, by whom, and what it was before. Every write of the book is in it but drafts
 * and the girths of bodies; what is written in one go is one step.
 */
public interface History {
  /** Says who makes the changes from now on that name nobody themselves. */
  void madeBy(By by);

  /**
   * Puts what is written from here to the end of the transaction under a step and a name; call it
   * inside {@link Book#inOneStep}.
   */
  void underStep(UUID stepId, By by);

  /** Forgets everything so far: what a book is handed over with is nobody's to take back. */
  void beginHere();

  /** The newest changes, newest first, at most so many. */
  List<Change> latest(int limit);

  /** Changes of one row, newest first. */
  List<Change> of(String entity, UUID entityId);

  /** Changes of rows that came and went with a piece: its photos, notes and marks; newest first. */
  List<Change> around(UUID pieceId);

  @Nullable Change find(UUID changeId);

  /** Changes made in one go, in the order they were made. */
  List<Change> step(UUID stepId);

  /**
   * The step that undo would take back: the last that stands.
   *
   * @param studentId only steps of this student count; null for anybody's
   */
  @Nullable UUID lastDone(@Nullable UUID studentId);

  /** The step that redo would do again; null once something new was done. */
  @Nullable UUID lastUndone(@Nullable UUID studentId);

  /**
   * Takes back everything that was done in one go; the taking back is itself a step, and taking it
   * back does it all again.
   *
   * @return the step that this made
   * @throws StaleRow when something of it was changed again since; names the row
   * @throws IllegalArgumentException when there is no such step, or it was taken back already
   */
  UUID undo(UUID stepId, By by);

  /**
   * Does again what was taken back.
   *
   * @param stepId the step that was taken back
   * @return the step that this made
   * @throws StaleRow when something of it was changed since; names the row
   * @throws IllegalArgumentException when it was not taken back
   */
  UUID redo(UUID stepId, By by);

  /** What a row and its parts hold now, as JSON in the history's own form; null when gone. */
  @Nullable String now(String entity, UUID entityId);

  /** A test piece as the history kept it; null when it holds none. */
  @Nullable TestPiece pieceIn(String json);

  /** A column's text in the history's JSON; empty when it has none. */
  String textIn(String json, String entity, UUID entityId, String column);
}
