package walebook.desk.term;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.classroom.StartClass;
import walebook.book.Classroom;
import walebook.desk.Sessions;
import walebook.desk.common.Session;

class TermViewModelTest {
  @TempDir Path folder;

  @Test
  void aClassThatWasBegunIsTakenInHand() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      Session session = Sessions.of(room.book);
      TermViewModel model = new TermViewModel(session);
      assertThat(model.termProperty().get()).isEmpty();
      model.partProperty().set(TermViewModel.Part.START);
      model.begun(room.schoolClass);
      assertThat(session.schoolClassProperty().get()).isEqualTo(room.schoolClass);
      assertThat(model.partProperty().get()).isEqualTo(TermViewModel.Part.STUDENTS);
      assertThat(model.termProperty().get()).isEqualTo("Autumn: 2026-09-01 to 2026-12-18");
      assertThat(model.classes()).containsExactly(room.schoolClass);
    }
  }

  /** The day that stands for a name is not said twice. */
  @Test
  void aTermThatNobodyNamedIsItsDays() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      Session session = Sessions.of(room.book);
      TermViewModel model = new TermViewModel(session);
      StartClass.Typed typed =
          new StartClass.Typed("Quay house", "", "", "2026-11-26", "", "", "Ina Mole");
      model.begun(new StartClass(room.book, Classroom.CLOCK).start(typed).value());
      assertThat(model.termProperty().get()).isEqualTo("2026-11-26 to 2027-02-18");
    }
  }
}
