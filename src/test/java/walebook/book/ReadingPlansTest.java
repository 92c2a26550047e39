package walebook.book;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.lesson.TakeUpLesson;
import walebook.lesson.Packs;
import walebook.record.By;
import walebook.record.ClothReading;
import walebook.record.Grain;
import walebook.record.Lesson;
import walebook.record.PlannedReading;
import walebook.record.ReadingLine;

/** Plans of readings on the disk, and what is measured of them. */
class ReadingPlansTest {
  private static final LocalDate DAY = LocalDate.of(2026, 10, 5);
  private static final By TUTOR = By.named("Tutor");

  @TempDir Path folder;

  private static Lesson lesson(Classroom room) {
    return new TakeUpLesson(room.book, Classroom.CLOCK)
        .takeUp(
            Packs.named("measuring-stretch"),
            room.schoolClass.id(),
            DAY,
            Map.of("a", room.cloth.id(), "b", room.cloth.id(), "c", room.cloth.id()),
            1)
        .value();
  }

  private static PlannedReading planned(
      Classroom room, Lesson lesson, UUID student, int place, String slot) {
    return new PlannedReading(
        Ids.next(),
        lesson.id(),
        student,
        place,
        place == 1,
        false,
        slot,
        room.cloth.id(),
        Grain.BIAS,
        2,
        Classroom.FRESH);
  }

  private static ClothReading reading(Classroom room, Lesson lesson, UUID student, Grain grain) {
    ClothReading reading = room.reading(room.cloth, lesson.id(), student, grain, 150);
    room.book.clothLog().add(reading);
    return reading;
  }

  private static List<ReadingLine> biased(Book book, Lesson lesson) {
    return book.readingPlans().of(lesson.id()).stream()
        .filter(each -> each.planned().grain() == Grain.BIAS)
        .toList();
  }

  @Test
  void aPlanReadsBackAndCountsOnlyItsOwnStudentLessonClothAndGrain() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      Book book = room.book;
      Lesson lesson = lesson(room);
      Lesson other = lesson(room);
      PlannedReading one = planned(room, lesson, room.first.id(), 90, "a");
      PlannedReading two = planned(room, lesson, room.first.id(), 91, "b");
      book.readingPlans().plan(List.of(one, two));
      assertThat(biased(book, lesson)).extracting(ReadingLine::planned).containsExactly(one, two);
      reading(room, other, room.first.id(), Grain.BIAS);
      reading(room, lesson, room.second.id(), Grain.BIAS);
      reading(room, lesson, room.first.id(), Grain.WALE);
      assertThat(biased(book, lesson)).allMatch(each -> each.measured().isEmpty());

      // One cloth stands for two of the plan: the first is filled before the second begins.
      ClothReading first = reading(room, lesson, room.first.id(), Grain.BIAS);
      assertThat(biased(book, lesson)).extracting(ReadingLine::done).containsExactly(1, 0);
      ClothReading second = reading(room, lesson, room.first.id(), Grain.BIAS);
      ClothReading third = reading(room, lesson, room.first.id(), Grain.BIAS);
      List<ReadingLine> now = biased(book, lesson);
      assertThat(now.get(0).measured()).containsExactly(first, second);
      assertThat(now.get(0).isDone()).isTrue();
      assertThat(now.get(1).measured()).containsExactly(third);
      assertThat(now.get(1).isDone()).isFalse();
      // What is over stays with the last and counts for no more than was asked.
      reading(room, lesson, room.first.id(), Grain.BIAS);
      reading(room, lesson, room.first.id(), Grain.BIAS);
      ReadingLine last = biased(book, lesson).get(1);
      assertThat(last.measured()).hasSize(3);
      assertThat(last.done()).isEqualTo(2);

      assertThat(book.readingPlans().of(room.schoolClass.id(), room.first.id()))
          .extracting(each -> each.planned().studentId())
          .containsOnly(room.first.id());
      assertThat(book.readingPlans().ofClass(room.schoolClass.id()))
          .containsAll(book.readingPlans().of(lesson.id()))
          .containsAll(book.readingPlans().of(other.id()));
    }
  }

  @Test
  void whatIsTakenBackIsFoundByItsKeyAlone() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      Book book = room.book;
      Lesson lesson = lesson(room);
      PlannedReading one = planned(room, lesson, room.first.id(), 90, "a");
      book.readingPlans().plan(List.of(one));
      PlannedReading back = one.takenBack(Classroom.NOW);
      book.readingPlans().replan(back);
      assertThat(biased(book, lesson)).isEmpty();
      assertThat(book.readingPlans().find(one.id())).isEqualTo(back);
      assertThatThrownBy(() -> book.readingPlans().replan(back)).isInstanceOf(StaleRow.class);
      UUID step = requireNonNull(book.history().lastDone(null));
      book.history().undo(step, TUTOR);
      assertThat(biased(book, lesson)).hasSize(1);
    }
  }

  @Test
  void itGoesIntoTheBinAndHoldsItsCloth() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      Book book = room.book;
      Lesson lesson = lesson(room);
      assertThatThrownBy(() -> book.bin().put("cloth", room.cloth.id(), TUTOR))
          .isInstanceOfSatisfying(
              StillUsed.class, used -> assertThat(used.table()).isEqualTo("planned_reading"));
      ReadingLine line = book.readingPlans().of(lesson.id()).get(0);
      book.bin().put("planned_reading", line.planned().id(), TUTOR);
      assertThat(book.readingPlans().of(lesson.id())).doesNotContain(line);
      book.bin().restore(book.bin().all().get(0).id(), TUTOR);
      assertThat(book.readingPlans().of(lesson.id()))
          .extracting(each -> each.planned().id())
          .contains(line.planned().id());
    }
  }

  @Test
  void anErasedStudentsPlanGoesWithTheStudent() {
    try (Classroom room = Classroom.in(folder.resolve("d.walebook"))) {
      Book book = room.book;
      Lesson lesson = lesson(room);
      assertThat(book.privacy().rowsOf(room.first.id())).containsEntry("planned_reading", 4);
      book.privacy().erase(room.first.id(), true, "S01", "S01");
      assertThat(book.readingPlans().of(lesson.id()))
          .isNotEmpty()
          .allMatch(each -> each.planned().studentId().equals(room.second.id()));
    }
  }
}
