package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.NOTE;

import java.util.List;
import java.util.UUID;
import org.jooq.TableField;
import walebook.book.Notes;
import walebook.book.jooq.made.tables.records.NoteRecord;
import walebook.record.Note;

/** Notes; each about one thing. */
record JooqNotes(Access access) implements Notes {

  @Override
  public void add(Note note) {
    NoteRecord row = Rows.stamped(new NoteRecord(), note.id(), note.stamp());
    row.set(column(note.about()), note.aboutId());
    row.setAuthor(note.author());
    row.setBody(note.body());
    access.insert(row);
  }

  @Override
  public List<Note> about(Note.About kind, UUID id) {
    return access.read(
        dsl ->
            dsl.selectFrom(NOTE)
                .where(column(kind).eq(id))
                .orderBy(NOTE.CREATED_AT, NOTE.ID)
                .fetch()
                .map(
                    row ->
                        new Note(
                            row.getId(),
                            kind,
                            id,
                            row.getAuthor(),
                            row.getBody(),
                            Rows.stamp(row))));
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
