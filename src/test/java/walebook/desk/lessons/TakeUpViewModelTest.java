package walebook.desk.lessons;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.lesson.ReadLessons;
import walebook.book.Classroom;
import walebook.desk.Sessions;
import walebook.record.Lesson;

class TakeUpViewModelTest {
  @TempDir Path folder;
  private final List<Lesson> taken = new ArrayList<>();

  @Test
  void eachClothOfThePlanAndAGoodDayAreWanted() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      var pack =
          ReadLessons.packs().stream()
              .filter(each -> each.about().name().equals("seam-that-stretches"))
              .findFirst()
              .orElseThrow();
      TakeUpViewModel model = new TakeUpViewModel(Sessions.of(room), pack, taken::add);
      model.takeUp();
      assertThat(model.cloth(pack.plan().cloths().get(0)).problem().get()).isNotNull();
      pack.plan()
          .cloths()
          .forEach(slot -> model.cloth(slot).text().set(room.cloth.id().toString()));
      model.on().text().set("next week");
      model.takeUp();
      assertThat(Objects.requireNonNull(model.on().problem().get()).code())
          .isEqualTo("date.not-a-date");
      assertThat(taken).isEmpty();
      model.on().text().set("2026-10-12");
      model.takeUp();
      assertThat(taken).extracting(Lesson::taughtOn).containsExactly(LocalDate.of(2026, 10, 12));
      assertThat(room.book.lessons().planOf(taken.get(0).id())).isNotEmpty();
    }
  }
}
