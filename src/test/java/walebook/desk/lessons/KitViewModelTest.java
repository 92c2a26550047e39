package walebook.desk.lessons;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.desk.Sessions;
import walebook.kit.Kit;
import walebook.lesson.LessonPack;
import walebook.lesson.Packs;
import walebook.lesson.Plan;

class KitViewModelTest {
  private static final LessonPack SEAM = Packs.seam();
  private static final Plan.ClothSlot FIRST = SEAM.plan().cloths().get(0);

  @TempDir Path folder;

  @Test
  void theClassInHandAndItsClothsNeedNoTyping() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      KitViewModel model = new KitViewModel(Sessions.of(room), SEAM);
      assertThat(model.field(KitViewModel.STUDENTS).text().get()).isEqualTo("2");
      model.cloth(FIRST).text().set(room.cloth.id().toString());
      model.field(KitViewModel.PRICES).text().set("a=8.5\n\n thread = 0.02 ");
      model.workOut();
      Kit kit = Objects.requireNonNull(model.kitProperty().get());
      assertThat(kit.students()).isEqualTo(2);
      assertThat(kit.cloths()).extracting("name").containsExactly("Grey jersey");
      assertThat(kit.cost()).isPositive();
      assertThat(model.saysProperty().get()).isEmpty();
    }
  }

  @Test
  void mistakesShowAtTheirFieldsAndNothingTypedIsLost() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      KitViewModel model = new KitViewModel(Sessions.of(room), SEAM);
      model.width(FIRST).text().set("wide");
      model.field(KitViewModel.STUDENTS).text().set("0");
      model.wash(FIRST).text().set("-5/x");
      model.workOut();
      assertThat(model.width(FIRST).problem().get()).isNotNull();
      assertThat(model.field(KitViewModel.STUDENTS).problem().get()).isNotNull();
      assertThat(model.kitProperty().get()).isNull();
      assertThat(model.width(FIRST).text().get()).isEqualTo("wide");
      assertThat(model.wash(FIRST).problem().get()).isNotNull();
      assertThat(model.saysProperty().get()).isEmpty();
      model.field(KitViewModel.STUDENTS).text().set("12");
      model.width(FIRST).text().set("150");
      model.wash(FIRST).text().set("");
      model.workOut();
      assertThat(model.saysProperty().get()).contains("150 mm of width is too narrow");
      assertThat(model.kitProperty().get()).isNull();
    }
  }

  @Test
  void aCuttingPlanIsSavedAsAPicture() throws IOException {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      KitViewModel model = new KitViewModel(Sessions.of(room.book, room.schoolClass, folder), SEAM);
      model.width(FIRST).text().set("150 cm");
      model.workOut();
      Kit kit = Objects.requireNonNull(model.kitProperty().get());
      model.save(kit.cloths().get(0));
      assertThat(Files.readString(folder.resolve("cutting-plan.svg"))).contains("<svg");
      assertThat(model.saysProperty().get()).contains("cutting-plan.svg");
    }
  }
}
