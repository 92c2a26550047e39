package walebook.desk.term;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.history.SayChange;
import walebook.act.history.StepBack;
import walebook.act.note.KeepNote;
import walebook.book.Classroom;
import walebook.desk.Sessions;
import walebook.desk.common.Notice;
import walebook.desk.common.Session;
import walebook.problem.Problem;
import walebook.record.Note;
import walebook.record.Student;
import walebook.record.Tier;
import walebook.words.Words;

class RosterViewModelTest {
  @TempDir Path folder;

  @Test
  void addsNamesWithCodesOfTheirOwn() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      RosterViewModel model = new RosterViewModel(Sessions.of(room));
      model.names().field("students").text().set("Cleo Mole\nBo Quay");
      model.add();
      assertThat(model.students()).extracting(Student::alias).containsExactly("S01", "S02", "S03");
      assertThat(model.names().text("students")).as("who was there").isEqualTo("Bo Quay");
    }
  }

  @Test
  void whoIsOnTheListAlreadyStaysInTheFieldAndIsSaid() {
    try (Classroom room = Classroom.in(folder.resolve("w.walebook"))) {
      RosterViewModel model = new RosterViewModel(Sessions.of(room));
      String there = room.first.name();
      String typed = there.toLowerCase(Locale.ROOT);
      model.names().field("students").text().set(typed + "\nCleo Mole\nCLEO  mole");
      model.add();
      assertThat(model.students()).hasSize(3);
      assertThat(model.names().text("students")).isEqualTo(typed + "\nCLEO mole");
      assertThat(Words.english().sayAtField(problem(model)))
          .startsWith(typed + ", CLEO mole: on the list already");
      assertThat(model.noticeProperty().get().says()).isEqualTo("Added to the list: 1.");
      model.add();
      assertThat(model.students()).hasSize(3);
      assertThat(model.noticeProperty().get()).isEqualTo(Notice.NONE);
      assertThat(problem(model).code()).isEqualTo("roster.already");
    }
  }

  @Test
  void whoHasLeftIsNotSaidToBeOnTheList() {
    try (Classroom room = Classroom.in(folder.resolve("x.walebook"))) {
      RosterViewModel model = new RosterViewModel(Sessions.of(room));
      model.open(room.first);
      model.leave();
      model.leave();
      model.names().field("students").text().set(room.first.name());
      model.add();
      assertThat(model.students()).hasSize(1);
      assertThat(problem(model).code()).isEqualTo("roster.left");
      assertThat(model.names().text("students")).isEqualTo(room.first.name());
    }
  }

  private static Problem problem(RosterViewModel model) {
    return Objects.requireNonNull(model.names().field("students").problem().get());
  }

  @Test
  void changesAStudentAndRefusesATakenCode() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      RosterViewModel model = new RosterViewModel(Sessions.of(room));
      model.open(room.first);
      model.card().field("student-alias").text().set("S02");
      model.save();
      assertThat(Objects.requireNonNull(model.card().field("student-alias").problem().get()).code())
          .isEqualTo("alias.taken");
      model.card().field("student-alias").text().set("S09");
      model.card().field("student-tier").text().set("own");
      model.save();
      assertThat(model.openProperty().get()).isNull();
      Student changed = Objects.requireNonNull(room.book.students().find(room.first.id()));
      assertThat(changed.alias()).isEqualTo("S09");
      assertThat(changed.tier()).isEqualTo(Tier.OWN);
    }
  }

  @Test
  void notesAboutAStudentAreTheTutorsAlone() {
    try (Classroom room = Classroom.in(folder.resolve("n.walebook"))) {
      Session session = Sessions.of(room);
      RosterViewModel model = new RosterViewModel(session);
      assertThat(model.notes().placeProperty().get()).isNull();
      model.open(room.first);
      model.notes().fields().field(KeepNote.BODY).text().set("Left-handed; sits by the window");
      model.notes().save();
      assertThat(room.book.notes().about(Note.About.STUDENT, room.first.id()))
          .extracting(Note::body)
          .containsExactly("Left-handed; sits by the window");
      assertThat(model.notes().notes()).hasSize(1);
      model.notes().fields().field(KeepNote.BODY).text().set("half ty");
      session.studentProperty().set(room.second);
      assertThat(model.lockedProperty().get()).isTrue();
      assertThat(model.notes().placeProperty().get()).isNull();
      assertThat(model.notes().notes()).isEmpty();
      model.notes().save();
      assertThat(room.book.notes().about(Note.About.STUDENT, room.first.id())).hasSize(1);
      model.tutorIsHere();
      assertThat(model.notes().notes()).hasSize(1);
      assertThat(model.notes().fields().text(KeepNote.BODY)).isEqualTo("half ty");
      model.open(room.second);
      assertThat(model.notes().notes()).isEmpty();
      assertThat(model.notes().fields().text(KeepNote.BODY)).isEmpty();
      model.open(null);
      assertThat(model.notes().placeProperty().get()).isNull();
    }
  }

  /** Taken back with the key that works everywhere, what was said is no longer true. */
  @Test
  void whatWasDoneIsNoLongerSaidOnceItIsTakenBack() {
    try (Classroom room = Classroom.in(folder.resolve("u.walebook"))) {
      Session session = Sessions.of(room);
      RosterViewModel model = new RosterViewModel(session);
      model.names().field("students").text().set("Cleo Mole");
      model.add();
      assertThat(model.noticeProperty().get().says()).contains("1");
      model.open(model.students().get(2));
      StepBack back =
          new StepBack(
              room.book, new SayChange(room.book, session.words(), /* namesHidden= */ false));
      back.undo(Objects.requireNonNull(back.undo(null)), session.by());
      session.changed();
      assertThat(model.students()).hasSize(2);
      assertThat(model.openProperty().get()).isNull();
      assertThat(model.noticeProperty().get()).isEqualTo(Notice.NONE);
    }
  }

  @Test
  void leavingIsAskedAboutOnce() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      RosterViewModel model = new RosterViewModel(Sessions.of(room));
      model.open(room.second);
      model.leave();
      assertThat(model.leavingProperty().get()).isTrue();
      assertThat(model.students()).hasSize(2);
      model.leave();
      assertThat(model.students()).containsExactly(room.first);
    }
  }
}
