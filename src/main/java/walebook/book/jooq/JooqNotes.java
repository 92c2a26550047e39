package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.NOTE;

import java.util.List;
import java.util.UUID;
import org.jooq.TableField;
import org.jspecify.annotations.Nullable;
import walebook.book.Notes;
import walebook.book.jooq.made.tables.records.NoteRecord;
import walebook.record.Note;

/** Notes; each about one thing. */
record JooqNotes(Access access) implements Notes {

  @Override
  public void add(Note note) {
    access.insert(row(note));
  }

  @Override
  public @Nullable Note find(UUID noteId) {
    return access.read(
        dsl -> dsl.selectFrom(NOTE).where(NOTE.ID.eq(noteId)).fetchOne(JooqNotes::note));
  }

  @Override
  public void update(Note note) {
    access.update(row(note));
  }

  @Override
  public List<Note> about(Note.About kind, UUID id) {
    return access.read(
        dsl ->
            dsl.selectFrom(NOTE)
                .where(column(kind).eq(id))
                .orderBy(NOTE.CREATED_AT, NOTE.ID)
                .fetch()
                .map(JooqNotes::note));
  }

  private static NoteRecord row(Note note) {
    NoteRecord row = Rows.stamped(new NoteRecord(), note.id(), note.stamp());
    row.set(column(note.about()), note.aboutId());
    row.setAuthor(note.author());
    row.setBody(note.body());
    return row;
  }

  private static Note note(NoteRecord row) {
    for (Note.About each : Note.About.values()) {
      UUID id = row.get(column(each));
      if (id != null) {
        return new Note(row.getId(), each, id, row.getAuthor(), row.getBody(), Rows.stamp(row));
      }
    }
    throw new IllegalStateException("a note about nothing: " + row.getId());
  }

  private static TableField<NoteRecord, UUID> column(Note.About about) {
    return switch (about) {
      case PIECE -> NOTE.PIECE_ID;
      case CLOTH -> NOTE.CLOTH_ID;
      case LESSON -> NOTE.LESSON_ID;
      case STUDENT -> NOTE.STUDENT_ID;
    };
  }
}
