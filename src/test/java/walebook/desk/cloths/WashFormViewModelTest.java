package walebook.desk.cloths;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.desk.Sessions;
import walebook.desk.common.Session;
import walebook.problem.Problem;
import walebook.quantity.Unit;
import walebook.record.ClothWash;
import walebook.record.Grain;
import walebook.working.Working;

class WashFormViewModelTest {
  @TempDir Path folder;

  private static void type(WashFormViewModel model, String field, String text) {
    model.fields().field(field).text().set(text);
  }

  @Test
  void theWorkingFollowsWhatIsTyped() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      WashFormViewModel model = new WashFormViewModel(Sessions.of(room));
      model.begin(room.cloth.id(), Unit.MM, "");
      assertThat(model.meaningProperty().get().workings()).isEmpty();
      type(model, "wale-before", "350");
      type(model, "wale-after", "332.5");
      // ISO 5077: 350 that became 332.5 is −5 %; turned round, 1000 mm want 1052.63 mm.
      List<Working> wale =
          Objects.requireNonNull(model.meaningProperty().get().workings().get(Grain.WALE));
      assertThat(wale.get(0).value()).isCloseTo(-5, within(1e-9));
      assertThat(wale.get(1).value()).isCloseTo(1052.63, within(0.005));
      assertThat(model.meaningProperty().get().area()).isNull();
      type(model, "course-after", "46 cm");
      // By definition: 0.95 × 0.92 leaves 0.874 of the area.
      assertThat(model.meaningProperty().get().area()).isCloseTo(-12.6, within(1e-9));
      type(model, "wale-after", "33x");
      assertThat(model.meaningProperty().get().workings()).containsOnlyKeys(Grain.COURSE);
    }
  }

  @Test
  void savesBothGrainsAndIsReadyForFurtherMarks() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      WashFormViewModel model = new WashFormViewModel(Sessions.of(room));
      model.begin(room.cloth.id(), Unit.MM, "40 °C");
      type(model, "wale-after", "480");
      type(model, "course-after", "495");
      model.save();
      assertThat(room.book.clothLog().washesOf(room.cloth.id()))
          .extracting(ClothWash::wash)
          .containsExactly("40 °C", "40 °C");
      assertThat(model.noticeProperty().get().says()).contains("−4.0 %").contains("−1.0 %");
      assertThat(model.fields().text("wale-after")).isEmpty();
      assertThat(model.fields().text("wale-before")).isEqualTo("500");
    }
  }

  @Test
  void aGrainThatWasNotMarkedIsLeftOut() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      WashFormViewModel model = new WashFormViewModel(Sessions.of(room));
      model.begin(room.cloth.id(), Unit.MM, "");
      model.save();
      assertThat(problem(model, "wale-after")).isEqualTo("field.needed");
      type(model, "course-after", "490");
      model.save();
      assertThat(room.book.clothLog().washesOf(room.cloth.id()))
          .extracting(ClothWash::grain)
          .containsExactly(Grain.COURSE);
      type(model, "course-after", "490");
      type(model, "wale-before", "400");
      model.save();
      assertThat(problem(model, "wale-after")).isEqualTo("field.needed");
      assertThat(room.book.clothLog().washesOf(room.cloth.id())).hasSize(1);
      assertThat(model.fields().text("course-after")).isEqualTo("490");
    }
  }

  @Test
  void whatIsUnlikelyIsAskedOnce() {
    try (Classroom room = Classroom.in(folder.resolve("d.walebook"))) {
      WashFormViewModel model = new WashFormViewModel(Sessions.of(room));
      model.begin(room.cloth.id(), Unit.MM, "");
      type(model, "wale-after", "300");
      model.save();
      assertThat(model.fields().asksProperty().get()).isTrue();
      assertThat(problem(model, "wale-after")).isEqualTo("wash.shrank");
      type(model, "wale-after", "301");
      assertThat(model.fields().asksProperty().get()).isFalse();
      model.save();
      assertThat(room.book.clothLog().washesOf(room.cloth.id())).isEmpty();
      model.save();
      assertThat(room.book.clothLog().washesOf(room.cloth.id())).hasSize(1);
    }
  }

  @Test
  void whatIsTypedWaitsAsADraftOfItsCloth() {
    try (Classroom room = Classroom.in(folder.resolve("e.walebook"))) {
      Session session = Sessions.of(room);
      WashFormViewModel model = new WashFormViewModel(session);
      model.begin(room.cloth.id(), Unit.MM, "");
      type(model, "wale-after", "48 x");
      model.kept().rest();
      WashFormViewModel later = new WashFormViewModel(session);
      later.begin(room.first.id(), Unit.MM, "");
      assertThat(later.fields().text("wale-after")).isEmpty();
      later.begin(room.cloth.id(), Unit.MM, "");
      assertThat(later.fields().text("wale-after")).isEqualTo("48 x");
      type(later, "wale-after", "480");
      later.save();
      WashFormViewModel after = new WashFormViewModel(session);
      after.begin(room.cloth.id(), Unit.MM, "");
      assertThat(after.fields().text("wale-after")).isEmpty();
      assertThat(room.book.drafts().of("wash")).isEmpty();
    }
  }

  private static String problem(WashFormViewModel model, String field) {
    Problem problem = model.fields().field(field).problem().get();
    return problem == null ? "" : problem.code();
  }
}
