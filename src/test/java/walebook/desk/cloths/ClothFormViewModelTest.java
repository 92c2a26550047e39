package walebook.desk.cloths;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.desk.Sessions;
import walebook.quantity.Unit;
import walebook.record.Cloth;

class ClothFormViewModelTest {
  @TempDir Path folder;
  private final List<Cloth> saved = new ArrayList<>();

  @Test
  void whatIsUnlikelyIsAskedAboutAndTakenAtTheSecondSave() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      ClothFormViewModel model = new ClothFormViewModel(Sessions.of(room), saved::add);
      model.begin(null, Unit.MM);
      model.fields().field("cloth-name").text().set("Sailcloth");
      model.fields().field("mass").text().set("1200");
      model.save();
      assertThat(saved).isEmpty();
      assertThat(model.fields().asksProperty().get()).isTrue();
      assertThat(model.fields().field("mass").problem().get()).isNotNull();
      model.fields().field("mass").text().set("1250");
      assertThat(model.fields().asksProperty().get()).isFalse();
      model.save();
      model.save();
      assertThat(saved).extracting(Cloth::massGm2).containsExactly(1250.0);
      assertThat(room.book.cloths().all()).hasSize(2);
    }
  }

  @Test
  void aRefusedFieldKeepsWhatWasTyped() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      ClothFormViewModel model = new ClothFormViewModel(Sessions.of(room), saved::add);
      model.begin(null, Unit.MM);
      model.fields().field("cloth-name").text().set("Grey jersey");
      model.fields().field("elastane").text().set("five");
      model.save();
      model.save();
      assertThat(saved).isEmpty();
      assertThat(Objects.requireNonNull(model.fields().field("cloth-name").problem().get()).code())
          .isEqualTo("name.taken");
      assertThat(model.fields().field("elastane").problem().get()).isNotNull();
      assertThat(model.fields().text("elastane")).isEqualTo("five");
    }
  }

  @Test
  void anUnchangedCardComesBackAsItWas() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      ClothFormViewModel model = new ClothFormViewModel(Sessions.of(room), saved::add);
      model.begin(room.cloth, Unit.MM);
      model.save();
      assertThat(saved).hasSize(1);
      assertThat(saved.get(0))
          .usingRecursiveComparison()
          .ignoringFields("stamp")
          .isEqualTo(room.cloth);
    }
  }
}
