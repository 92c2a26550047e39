package walebook.desk.cloths;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.desk.Sessions;
import walebook.quantity.Unit;

class ReadingFormViewModelTest {
  @TempDir Path folder;

  private static void type(ReadingFormViewModel model, String field, String text) {
    model.fields().field(field).text().set(text);
  }

  @Test
  void theWorkingFollowsWhatIsTyped() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      ReadingFormViewModel model = new ReadingFormViewModel(Sessions.of(room));
      model.begin(room.cloth.id(), Unit.MM);
      assertThat(model.meaningProperty().get().workings()).isEmpty();
      // Common practice: 10 cm reaching 15 cm is 50 %, reaching 13 cm is 30 %.
      type(model, "stretched", "15 cm");
      assertThat(model.meaningProperty().get().workings().get(0).value()).isEqualTo(50);
      type(model, "stretched", "130");
      assertThat(model.meaningProperty().get().workings().get(0).value()).isEqualTo(30);
      type(model, "released", "103");
      assertThat(model.meaningProperty().get().workings())
          .extracting(each -> each.name())
          .containsExactly("stretch", "growth", "recovery");
      type(model, "stretched", "13x");
      assertThat(model.meaningProperty().get().workings()).isEmpty();
      assertThat(model.meaningProperty().get().gauge().stretched()).isNull();
    }
  }

  @Test
  void savesAndIsReadyForTheNext() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      ReadingFormViewModel model = new ReadingFormViewModel(Sessions.of(room));
      model.begin(room.cloth.id(), Unit.MM);
      type(model, "stretched", "150");
      model.save();
      assertThat(room.book.clothLog().readingsOf(room.cloth.id())).hasSize(1);
      assertThat(model.fields().text("stretched")).isEmpty();
      assertThat(model.fields().text("gauge")).isEqualTo("100");
      assertThat(model.noticeProperty().get().says()).contains("50.0 %");
    }
  }

  @Test
  void aReleasedLengthBeyondTheStretchedOneIsAskedAbout() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      ReadingFormViewModel model = new ReadingFormViewModel(Sessions.of(room));
      model.begin(room.cloth.id(), Unit.MM);
      type(model, "stretched", "150");
      type(model, "released", "151");
      model.save();
      assertThat(model.asksProperty().get()).isTrue();
      assertThat(room.book.clothLog().readingsOf(room.cloth.id())).isEmpty();
      assertThat(model.fields().text("released")).isEqualTo("151");
      model.save();
      assertThat(room.book.clothLog().readingsOf(room.cloth.id())).hasSize(1);
    }
  }
}
