package walebook.act.note;

import java.util.UUID;
import walebook.record.Note;

/** The thing that notes are about. */
public record NotePlace(Note.About about, UUID id) {

  /** A name for drafts: the kind and the key. */
  public String owner() {
    return about.name() + "/" + id;
  }
}
