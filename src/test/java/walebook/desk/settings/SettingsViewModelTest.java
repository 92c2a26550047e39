package walebook.desk.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.desk.Sessions;
import walebook.desk.common.Session;
import walebook.quantity.Unit;

class SettingsViewModelTest {
  @TempDir Path folder;

  @Test
  void keepsNameAndUnitInTheBook() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      Session session = Sessions.of(room);
      SettingsViewModel model = new SettingsViewModel(session);
      assertThat(model.fields().text("book-name")).isEqualTo("Harbour hall");
      model.fields().field("book-name").text().set("Hall, autumn");
      model.unitProperty().set(Unit.CM);
      model.save();
      assertThat(room.book.info().name()).isEqualTo("Hall, autumn");
      assertThat(room.book.info().lengthUnit()).isEqualTo(Unit.CM);
      assertThat(session.changesProperty().get()).isEqualTo(1);
    }
  }

  @Test
  void anEmptyNameIsRefusedAtItsField() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      SettingsViewModel model = new SettingsViewModel(Sessions.of(room));
      model.fields().field("book-name").text().set(" ");
      model.save();
      assertThat(model.fields().field("book-name").problem().get()).isNotNull();
      assertThat(room.book.info().name()).isEqualTo("Harbour hall");
    }
  }
}
