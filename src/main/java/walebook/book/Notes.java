package walebook.book;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.record.ClassNote;
import walebook.record.Note;

/** Longer words about a piece, a cloth, a lesson or a student. */
public interface Notes {
  void add(Note note);

  @Nullable Note find(UUID noteId);

  /**
   * Saves changed words; the stamp must be the next after the saved one's.
   *
   * @throws StaleRow when somebody else saved it meanwhile, or it is not there
   */
  void update(Note note);

  /** Notes about one thing, oldest first. */
  List<Note> about(Note.About kind, UUID id);

  /**
   * Notes about a class's pieces and lessons and about the room's cloths, oldest first; never about
   * a student.
   */
  List<ClassNote> ofClass(UUID classId);
}
