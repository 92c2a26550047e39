package walebook.desk.term;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.desk.Sessions;
import walebook.desk.common.Session;

class ExportViewModelTest {
  @TempDir Path folder;
  private final List<Boolean> names = new ArrayList<>();

  private Path write(Path file, boolean withNames) throws IOException {
    names.add(withNames);
    return Files.writeString(file, "written");
  }

  @Test
  void writesWithCodesUnlessNamesAreChosenAndSaysWhere() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      Session session = Sessions.of(room.book, room.schoolClass, folder);
      ExportViewModel model = new ExportViewModel(session, (file, of, with) -> write(file, with));
      model.export();
      assertThat(folder.resolve("monday-evening.xlsx")).exists();
      assertThat(model.saysProperty().get())
          .contains(folder.resolve("monday-evening.xlsx").toString());
      model.shownProperty().set(ExportViewModel.Shown.NAMES);
      model.export();
      assertThat(names).containsExactly(false, true);
    }
  }

  @Test
  void aDiskThatRefusesIsSaidInThePlace() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      Session session = Sessions.of(room.book, room.schoolClass, folder.resolve("no such folder"));
      ExportViewModel model = new ExportViewModel(session, (file, of, with) -> write(file, with));
      model.export();
      assertThat(model.saysProperty().get()).contains("could not be written");
      assertThat(model.writingProperty().get()).isFalse();
    }
  }

  @Test
  void leavingTheChooserWritesNothing() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      ExportViewModel model =
          new ExportViewModel(Sessions.of(room), (file, of, with) -> write(file, with));
      model.export();
      assertThat(names).isEmpty();
      assertThat(model.saysProperty().get()).isEmpty();
    }
  }
}
