package walebook.desk.cloths;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.Deque;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.cloth.StartReading;
import walebook.book.Classroom;
import walebook.book.Ids;
import walebook.desk.MeasuredClass;
import walebook.desk.PlannedClass;
import walebook.desk.Sessions;
import walebook.desk.common.Session;
import walebook.desk.common.Worker;
import walebook.quantity.Unit;
import walebook.record.Cloth;
import walebook.record.Edge;
import walebook.record.Lesson;
import walebook.record.ReadingLine;

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

  /** The disk is slow, and the hands are not: the answer finds the form at another cloth. */
  @Test
  void whatIsTypedForTheNextClothStaysWhenTheSaveOfTheOneBeforeIsAnswered() {
    try (Classroom room = Classroom.in(folder.resolve("slow.walebook"))) {
      Cloth other =
          new Cloth(
              Ids.next(),
              "Rib",
              "rib-1x1",
              "",
              5.0,
              180.0,
              1500.0,
              0.6,
              Edge.UNKNOWN,
              "",
              false,
              Classroom.FRESH);
      room.book.cloths().add(other);
      Deque<Runnable> disk = new ArrayDeque<>();
      Session session =
          Sessions.bare(room.book, new Worker(disk::add, Runnable::run), PlannedClass.OneFile.NONE);
      ReadingFormViewModel model = new ReadingFormViewModel(session);
      model.begin(room.cloth.id(), Unit.MM);
      work(disk);
      type(model, "stretched", "150");
      model.save();
      model.begin(other.id(), Unit.MM);
      type(model, "stretched", "140");
      work(disk);
      assertThat(room.book.clothLog().readingsOf(room.cloth.id())).hasSize(1);
      assertThat(model.fields().text("stretched")).isEqualTo("140");
      model.begin(room.cloth.id(), Unit.MM);
      work(disk);
      assertThat(model.fields().text("stretched")).as("saved, so no draft").isEmpty();
      model.begin(other.id(), Unit.MM);
      work(disk);
      assertThat(model.fields().text("stretched")).isEqualTo("140");
    }
  }

  private static void work(Deque<Runnable> disk) {
    for (Runnable next = disk.poll(); next != null; next = disk.poll()) {
      next.run();
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
      assertThat(model.fields().asksProperty().get()).isTrue();
      assertThat(room.book.clothLog().readingsOf(room.cloth.id())).isEmpty();
      assertThat(model.fields().text("released")).isEqualTo("151");
      model.save();
      assertThat(room.book.clothLog().readingsOf(room.cloth.id())).hasSize(1);
    }
  }

  @Test
  void aPlannedReadingIsFilledInAsItsLessonMeasuresAndCountsForIt() {
    try (Classroom room = Classroom.in(folder.resolve("d.walebook"))) {
      Lesson lesson = MeasuredClass.of(room, "ease-and-fit", LocalDate.of(2026, 10, 5));
      ReadingLine first = MeasuredClass.mine(room, lesson).get(0);
      StartReading start = new StartReading(room.book);
      // Nobody is picked: the reading is the student's whose plan it is.
      ReadingFormViewModel model = new ReadingFormViewModel(Sessions.of(room));
      model.begin(requireNonNull(start.of(first.planned().id())), Unit.MM);
      assertThat(model.fields().typed())
          .containsEntry("grain", "course")
          .containsEntry("gauge", "100")
          .containsEntry("hold", "30")
          .containsEntry("rest", "60")
          .containsEntry("fold", "folded")
          .containsEntry("pull", "comfortable")
          .containsEntry("measured-on", "2026-10-05");
      for (int i = 1; i <= 3; i++) {
        type(model, "stretched", "150");
        model.save();
        assertThat(requireNonNull(model.askedProperty().get()).line().done()).isEqualTo(i);
      }
      StartReading.Asked now = requireNonNull(model.askedProperty().get());
      assertThat(now.line().isDone()).isTrue();
      assertThat(requireNonNull(now.next()).plannedId())
          .isEqualTo(MeasuredClass.mine(room, lesson).get(1).planned().id());
      assertThat(room.book.clothLog().allReadings())
          .hasSize(3)
          .allMatch(each -> room.first.id().equals(each.measuredBy()))
          .allMatch(each -> lesson.id().equals(each.lessonId()))
          .allMatch(each -> room.schoolClass.id().equals(each.classId()));
    }
  }

  @Test
  void aReadingBegunFromTheClothsCardCountsForThePlanThatAsksForIt() {
    try (Classroom room = Classroom.in(folder.resolve("e.walebook"))) {
      Lesson lesson = MeasuredClass.of(room);
      ReadingLine first = MeasuredClass.mine(room, lesson).get(0);
      Session session = Sessions.of(room);
      session.studentProperty().set(room.first);
      ReadingFormViewModel model = new ReadingFormViewModel(session);
      model.begin(requireNonNull(first.planned().clothId()), Unit.MM);
      type(model, "grain", first.planned().grain().key());
      type(model, "stretched", "150");
      model.save();
      assertThat(MeasuredClass.mine(room, lesson).get(0).done()).isEqualTo(1);
      assertThat(model.noticeProperty().get().says()).contains("counts for your plan");
      type(model, "grain", "bias");
      type(model, "stretched", "150");
      model.save();
      assertThat(room.book.clothLog().allReadings())
          .filteredOn(each -> each.lessonId() == null)
          .hasSize(1);
    }
  }
}
