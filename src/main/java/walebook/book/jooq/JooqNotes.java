package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.LESSON;
import static walebook.book.jooq.made.Tables.NOTE;
import static walebook.book.jooq.made.Tables.TEST_PIECE;

import java.util.List;
import java.util.UUID;
import org.jooq.Record;
import org.jooq.TableField;
import org.jspecify.annotations.Nullable;
import walebook.book.Notes;
import walebook.book.jooq.made.tables.records.NoteRecord;
import walebook.record.ClassNote;
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

  @Override
  public List<ClassNote> ofClass(UUID classId) {
    return access.read(
        dsl ->
            dsl.select(NOTE.fields())
                .select(TEST_PIECE.CODE, TEST_PIECE.STUDENT_ID, TEST_PIECE.LESSON_ID)
                .from(NOTE)
                .leftJoin(TEST_PIECE)
                .on(TEST_PIECE.ID.eq(NOTE.PIECE_ID))
                .leftJoin(LESSON)
                .on(LESSON.ID.eq(NOTE.LESSON_ID))
                .where(TEST_PIECE.CLASS_ID.eq(classId))
                .or(LESSON.CLASS_ID.eq(classId))
                .or(NOTE.CLOTH_ID.isNotNull())
                .orderBy(NOTE.CREATED_AT, NOTE.ID)
                .fetch()
                .map(JooqNotes::noted));
  }

  private static ClassNote noted(Record row) {
    String code = row.get(TEST_PIECE.CODE);
    return new ClassNote(
        note(row.into(NOTE)),
        code == null
            ? null
            : new ClassNote.Of(
                code, row.get(TEST_PIECE.STUDENT_ID), row.get(TEST_PIECE.LESSON_ID)));
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
