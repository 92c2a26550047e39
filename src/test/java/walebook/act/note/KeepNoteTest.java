package walebook.act.note;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.problem.Answer;
import walebook.record.By;
import walebook.record.Note;
import walebook.record.SeamEnd;
import walebook.record.TestPiece;
import walebook.words.Words;

class KeepNoteTest {
  @TempDir Path folder;

  @Test
  void aNoteStandsWithItsThingAlone() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      TestPiece piece = room.piece(SeamEnd.GAVE, 140);
      room.book.pieces().add(piece);
      KeepNote act = new KeepNote(room.book, Classroom.CLOCK);
      NotePlace onPiece = new NotePlace(Note.About.PIECE, piece.id());
      NotePlace onStudent = new NotePlace(Note.About.STUDENT, room.first.id());
      act.add(onPiece, Map.of(KeepNote.BODY, " of the piece ", KeepNote.FROM, "Mo"));
      act.add(onStudent, Map.of(KeepNote.BODY, "of the student"));
      ReadNotes read = new ReadNotes(room.book, Words.english());
      assertThat(read.about(onPiece, false))
          .extracting(ReadNotes.Line::says)
          .containsExactly("of the piece");
      assertThat(read.about(onStudent, false))
          .extracting(ReadNotes.Line::says)
          .containsExactly("of the student");
      assertThat(room.book.history().around(piece.id())).isNotEmpty();
    }
  }

  @Test
  void aChangeOverSomebodyElsesIsRefusedAndSaid() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      KeepNote act = new KeepNote(room.book, Classroom.CLOCK);
      NotePlace place = new NotePlace(Note.About.CLOTH, room.cloth.id());
      Note note = act.add(place, Map.of(KeepNote.BODY, "one")).value();
      assertThat(act.change(note, Map.of(KeepNote.BODY, "two")).isGood()).isTrue();
      Answer<Note> late = act.change(note, Map.of(KeepNote.BODY, "three"));
      assertThat(late.problems()).extracting(each -> each.code()).containsExactly(KeepNote.STALE);
      Note found = room.book.notes().find(note.id());
      assertThat(found).isNotNull().extracting(Note::body).isEqualTo("two");
      room.book.bin().put("note", note.id(), By.NOBODY);
      assertThat(room.book.notes().find(note.id())).isNull();
      assertThat(act.change(note, Map.of(KeepNote.BODY, "four")).isGood()).isFalse();
    }
  }
}
