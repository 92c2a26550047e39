package walebook.desk.common;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Objects;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.note.KeepNote;
import walebook.act.note.ReadNotes;
import walebook.book.Classroom;
import walebook.book.Ids;
import walebook.desk.Sessions;
import walebook.record.Note;
import walebook.record.Tutor;

class NotesViewModelTest {
  @TempDir Path folder;

  private static void type(NotesViewModel model, String text) {
    model.fields().field(KeepNote.BODY).text().set(text);
  }

  private static NotesViewModel open(Session session, UUID cloth) {
    NotesViewModel model = new NotesViewModel(session);
    model.open(Note.About.CLOTH, cloth);
    return model;
  }

  @Test
  void aNoteIsAddedUnderTheNameOfWhoSitsThere() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      Session session = Sessions.of(room);
      NotesViewModel model = open(session, room.cloth.id());
      assertThat(model.asksWho().get()).isTrue();
      session.studentProperty().set(room.first);
      assertThat(model.asksWho().get()).isFalse();
      type(model, "  ");
      model.save();
      assertThat(model.fields().field(KeepNote.BODY).problem().get()).isNotNull();
      assertThat(model.notes()).isEmpty();
      type(model, "Curls.\nPin it.");
      model.save();
      assertThat(model.notes())
          .extracting(ReadNotes.Line::from, ReadNotes.Line::says)
          .containsExactly(org.assertj.core.groups.Tuple.tuple("Ada Pier", "Curls.\nPin it."));
      assertThat(model.fields().text(KeepNote.BODY)).isEmpty();
      assertThat(model.noticeProperty().get().says()).isNotEmpty();
      room.book.history().undo(lastStep(room), session.by());
      session.changed();
      assertThat(model.notes()).isEmpty();
      assertThat(model.noticeProperty().get().says()).isEmpty();
    }
  }

  @Test
  void withNobodyThereTheNoteSaysWhoItIsFrom() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      NotesViewModel model = open(Sessions.of(room), room.cloth.id());
      model.fields().field(KeepNote.FROM).text().set("Mo");
      type(model, "one");
      model.save();
      type(model, "two");
      model.save();
      assertThat(model.notes()).extracting(ReadNotes.Line::from).containsExactly("Mo", "Mo");
    }
  }

  @Test
  void aChangeKeepsAuthorAndDayAndWhatWasBeingAdded() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      Session session = Sessions.of(room);
      session.studentProperty().set(room.first);
      NotesViewModel model = open(session, room.cloth.id());
      type(model, "frays");
      model.save();
      Note before = model.notes().get(0).note();
      session.studentProperty().set(room.second);
      type(model, "half a sentence");
      model.change(model.notes().get(0));
      assertThat(model.changing().get()).isTrue();
      assertThat(model.fields().text(KeepNote.BODY)).isEqualTo("frays");
      type(model, "frays at the raw edge");
      model.save();
      Note after = model.notes().get(0).note();
      assertThat(after.body()).isEqualTo("frays at the raw edge");
      assertThat(after.author()).isEqualTo("Ada Pier");
      assertThat(after.stamp().created()).isEqualTo(before.stamp().created());
      assertThat(after.stamp().version()).isEqualTo(2);
      assertThat(model.changing().get()).isFalse();
      assertThat(model.fields().text(KeepNote.BODY)).isEqualTo("half a sentence");
      room.book.history().undo(lastStep(room), session.by());
      session.changed();
      assertThat(model.notes().get(0).says()).isEqualTo("frays");
    }
  }

  @Test
  void aChangeThatIsNotSavedIsNotLostToAnother() {
    try (Classroom room = Classroom.in(folder.resolve("d.walebook"))) {
      NotesViewModel model = open(Sessions.of(room), room.cloth.id());
      type(model, "one");
      model.save();
      type(model, "two");
      model.save();
      model.change(model.notes().get(0));
      type(model, "one, longer");
      model.change(model.notes().get(1));
      assertThat(model.fields().text(KeepNote.BODY)).isEqualTo("one, longer");
      assertThat(model.noticeProperty().get().says()).isNotEmpty();
      model.leave();
      model.change(model.notes().get(1));
      assertThat(model.fields().text(KeepNote.BODY)).isEqualTo("two");
    }
  }

  @Test
  void aNoteGoesToTheBinAndWhatWasTypedOverItStays() {
    try (Classroom room = Classroom.in(folder.resolve("e.walebook"))) {
      NotesViewModel model = open(Sessions.of(room), room.cloth.id());
      type(model, "one");
      model.save();
      model.change(model.notes().get(0));
      type(model, "one, longer");
      model.bin(model.notes().get(0));
      assertThat(model.notes()).isEmpty();
      assertThat(model.changing().get()).isFalse();
      Objects.requireNonNull(model.noticeProperty().get().undo()).run();
      assertThat(model.notes()).extracting(ReadNotes.Line::says).containsExactly("one");
      model.save();
      assertThat(model.notes())
          .extracting(ReadNotes.Line::says)
          .containsExactlyInAnyOrder("one", "one, longer");
    }
  }

  @Test
  void namesAreCoveredInAuthorAndWordsWhileTheyAreHidden() {
    try (Classroom room = Classroom.in(folder.resolve("f.walebook"))) {
      room.book.tutors().add(new Tutor(Ids.next(), "Mo Mole", Classroom.FRESH));
      Session session = Sessions.of(room);
      session.studentProperty().set(room.first);
      NotesViewModel model = open(session, room.cloth.id());
      type(model, "Bo Quay pulls harder; ask Mo Mole.");
      model.save();
      session.namesHiddenProperty().set(true);
      ReadNotes.Line line = model.notes().get(0);
      assertThat(line.from()).isEqualTo("S01");
      assertThat(line.says()).startsWith("S02 pulls harder").doesNotContain("Mole");
      model.change(line);
      model.save();
      assertThat(room.book.notes().about(Note.About.CLOTH, room.cloth.id()).get(0).body())
          .as("a change never writes the codes")
          .startsWith("Bo Quay");
    }
  }

  @Test
  void whatIsTypedWaitsForItsThingAndItsWriter() {
    try (Classroom room = Classroom.in(folder.resolve("g.walebook"))) {
      Session session = Sessions.of(room);
      session.studentProperty().set(room.first);
      NotesViewModel model = open(session, room.cloth.id());
      type(model, "mine");
      session.studentProperty().set(room.second);
      assertThat(model.fields().text(KeepNote.BODY)).isEmpty();
      type(model, "theirs");
      model.open(Note.About.STUDENT, room.first.id());
      assertThat(model.fields().text(KeepNote.BODY)).isEmpty();
      NotesViewModel later = open(session, room.cloth.id());
      assertThat(later.fields().text(KeepNote.BODY)).isEqualTo("theirs");
      session.studentProperty().set(room.first);
      assertThat(later.fields().text(KeepNote.BODY)).isEqualTo("mine");
      later.save();
      assertThat(later.notes()).extracting(ReadNotes.Line::from).containsExactly("Ada Pier");
      type(later, "last");
      later.rest();
      assertThat(open(session, room.cloth.id()).fields().text(KeepNote.BODY)).isEqualTo("last");
    }
  }

  private static UUID lastStep(Classroom room) {
    return Objects.requireNonNull(room.book.history().lastDone(null));
  }
}
