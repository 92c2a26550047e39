package walebook.book;

import java.util.List;
import java.util.UUID;
import walebook.record.Note;

/** Longer words about a piece, a cloth, a lesson or a student. */
public interface Notes {
  void add(Note note);

  /** Notes about one thing, oldest first. */
  List<Note> about(Note.About kind, UUID id);
}
