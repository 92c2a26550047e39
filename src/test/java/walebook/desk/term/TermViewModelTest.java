package walebook.desk.term;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
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

  @Test
  void aTermThatWasGivenNoNameSaysItsFirstDayOnce() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      Session session = Sessions.of(room.book);
      TermViewModel model = new TermViewModel(session);
      StartClassViewModel start = new StartClassViewModel(session, model::begun);
      start.fields().field("class-name").text().set("Thursday");
      start.fields().field("term-starts").text().set("2026-11-26");
      start.fields().field("term-ends").text().set("2027-02-18");
      start.start();
      assertThat(model.termProperty().get()).isEqualTo("2026-11-26 to 2027-02-18");
    }
  }
}
