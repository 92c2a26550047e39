package walebook.desk.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.desk.RoomBook;
import walebook.desk.Sessions;
import walebook.desk.common.Session;

class ProgressViewModelTest {
  @TempDir Path folder;

  @Test
  void countsWhatIsLoggedOfWhatWasPlanned() {
    try (Classroom room = RoomBook.in(folder.resolve("a.walebook"))) {
      ProgressViewModel model = new ProgressViewModel(Sessions.of(room));
      assertThat(model.rows()).hasSize(12);
      assertThat(model.lessons()).hasSize(1);
      assertThat(model.cell(model.rows().get(0), 0)).isEqualTo("4 / 5");
      assertThat(model.rows().get(0).found().own()).isEqualTo(2);
    }
  }

  @Test
  void hiddenNamesGiveWayToAliases() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      Session session = Sessions.of(room);
      ProgressViewModel model = new ProgressViewModel(session);
      assertThat(model.rows()).extracting(ProgressRow::name).containsExactly("Ada Pier", "Bo Quay");
      session.namesHiddenProperty().set(true);
      assertThat(model.rows()).extracting(ProgressRow::name).containsExactly("S01", "S02");
    }
  }
}
