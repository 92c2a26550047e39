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
import walebook.lesson.Packs;
import walebook.record.Grain;
import walebook.record.Lesson;

class TakeUpViewModelTest {
  @TempDir Path folder;
  private final List<Lesson> taken = new ArrayList<>();

  @Test
  void aClothThatNobodyMeasuredIsToldBeforeThePlanIsMade() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      var pack = Packs.seam();
      TakeUpViewModel model = new TakeUpViewModel(Sessions.of(room), pack, taken::add);
      assertThat(model.unmeasuredProperty().get()).isEmpty();
      model.cloth(pack.plan().cloths().get(0)).text().set(room.cloth.id().toString());
      assertThat(model.unmeasuredProperty().get()).isEqualTo("Grey jersey");
      room.book.clothLog().add(room.reading(Grain.COURSE, 150));
      model.cloth(pack.plan().cloths().get(1)).text().set(room.cloth.id().toString());
      assertThat(model.unmeasuredProperty().get()).isEmpty();
    }
  }

  @Test
  void sharesAndWhatIsLeftOutAreTakenAsTyped() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      var pack = Packs.seam();
      TakeUpViewModel model = new TakeUpViewModel(Sessions.of(room), pack, taken::add);
      pack.plan()
          .cloths()
          .forEach(slot -> model.cloth(slot).text().set(room.cloth.id().toString()));
      model.more(TakeUpViewModel.SHARE).text().set("99");
      model.takeUp();
      model.takeUp();
      assertThat(Objects.requireNonNull(model.more(TakeUpViewModel.SHARE).problem().get()).code())
          .isEqualTo("lesson.share-too-large");
      model.more(TakeUpViewModel.SHARE).text().set("2");
      model.more(TakeUpViewModel.LEAVE_OUT).text().set("width=3\n");
      model.more(TakeUpViewModel.SEED).text().set("7");
      model.takeUp();
      model.takeUp();
      var planned = room.book.lessons().planOf(taken.get(0).id());
      assertThat(planned).hasSize(6).noneMatch(each -> each.cell().contains("width=3"));
    }
  }

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
      assertThat(taken).as("one cloth for both is asked about first").isEmpty();
      model.takeUp();
      assertThat(taken).extracting(Lesson::taughtOn).containsExactly(LocalDate.of(2026, 10, 12));
      assertThat(room.book.lessons().planOf(taken.get(0).id())).isNotEmpty();
    }
  }
}
