package walebook.record;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A note of a class, and the piece it is about.
 *
 * @param piece null for a note about a cloth or a lesson
 */
public record ClassNote(Note note, @Nullable Of piece) {

  /**
   * The piece, cut down to what a list of notes says of it.
   *
   * @param lessonId null for a piece without a lesson
   */
  public record Of(String code, UUID studentId, @Nullable UUID lessonId) {}
}
