package walebook.desk.lessons;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.lesson.ReadLessons;
import walebook.book.Classroom;
import walebook.desk.RoomBook;
import walebook.desk.Sessions;
import walebook.desk.common.Session;
import walebook.desk.common.Wish;

class LessonsViewModelTest {
  @TempDir Path folder;

  @Test
  void showsThePacksAndWhatTheClassTookUp() {
    try (Classroom room = RoomBook.in(folder.resolve("a.walebook"))) {
      LessonsViewModel model = new LessonsViewModel(Sessions.of(room));
      assertThat(model.packs())
          .extracting(each -> each.about().name())
          .startsWith("measuring-stretch", "do-we-measure-alike")
          .contains("seam-that-stretches")
          .hasSize(12);
      ReadLessons.Taken taken = model.taken().get(0);
      assertThat(taken.planned()).isEqualTo(60);
      assertThat(taken.logged()).isEqualTo(48);
    }
  }

  @Test
  void aPlanShowsAliasesWhereNamesAreHidden() {
    try (Classroom room = RoomBook.in(folder.resolve("b.walebook"))) {
      Session session = Sessions.of(room);
      LessonsViewModel model = new LessonsViewModel(session);
      session.wish(new Wish("lessons", Wish.What.OPEN, model.taken().get(0).lesson().id()));
      assertThat(model.partProperty().get()).isEqualTo(LessonsViewModel.Part.PLAN);
      session.namesHiddenProperty().set(true);
      ReadLessons.ClassPlan plan = Objects.requireNonNull(model.planProperty().get());
      assertThat(plan.parts()).hasSize(12);
      assertThat(plan.parts()).allMatch(part -> part.name().startsWith("S"));
    }
  }

  @Test
  void readsTakesUpAndGoesBack() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      LessonsViewModel model = new LessonsViewModel(Sessions.of(room));
      model.read(model.packs().get(1));
      model.takeUp();
      assertThat(model.partProperty().get()).isEqualTo(LessonsViewModel.Part.TAKE_UP);
      model.back();
      assertThat(model.partProperty().get()).isEqualTo(LessonsViewModel.Part.READ);
      model.back();
      assertThat(model.partProperty().get()).isEqualTo(LessonsViewModel.Part.LIST);
    }
  }
}
