package walebook.act.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.classroom.EnrolStudents;
import walebook.book.Classroom;
import walebook.lesson.Packs;
import walebook.problem.Answer;
import walebook.problem.Problem;
import walebook.record.Lesson;
import walebook.record.PlannedPiece;
import walebook.record.PlannedReading;
import walebook.record.ReadingLine;
import walebook.record.SeamEnd;
import walebook.record.Student;
import walebook.record.TestPiece;
import walebook.record.Whose;

class ReplanLessonTest {
  private static final LocalDate DAY = LocalDate.of(2026, 10, 5);

  @TempDir Path folder;

  private static Lesson taken(Classroom room, ReadLimits.Typed limits) {
    Map<String, UUID> cloths = Map.of("a", room.cloth.id(), "b", room.cloth.id());
    return new TakeUpLesson(room.book, Classroom.CLOCK)
        .takeUp(Packs.seam(), room.schoolClass.id(), DAY, cloths, limits, 5)
        .value();
  }

  private static Answer<ReplanLesson.Replanned> again(Classroom room, Lesson lesson) {
    return new ReplanLesson(room.book, Classroom.CLOCK).replan(lesson, ReadLimits.Typed.NOTHING, 6);
  }

  private static void log(Classroom room, PlannedPiece planned) {
    TestPiece sewn = room.piece(SeamEnd.GAVE, 140);
    Whose whose =
        new Whose(
            room.schoolClass.id(), planned.studentId(), planned.lessonId(), planned.id(), DAY);
    room.book.pieces().add(Classroom.like(sewn, planned.code()).with(whose));
  }

  @Test
  void leaversLoseWhatIsOpenNewcomersGetAShareAndLoggedPiecesStay() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      Lesson lesson = taken(room, ReadLimits.Typed.NOTHING);
      List<PlannedPiece> before = room.book.lessons().planOf(lesson.id());
      PlannedPiece logged =
          before.stream().filter(each -> each.studentId().equals(room.first.id())).toList().get(2);
      log(room, logged);
      room.book.enrolments().leave(room.schoolClass.id(), room.first.id(), DAY);
      Student late =
          new EnrolStudents(room.book, Classroom.CLOCK)
              .enrol(room.schoolClass.id(), "Cy Late")
              .added()
              .get(0);
      ReplanLesson.Replanned done = again(room, lesson).value();
      assertThat(done.back()).hasSize(4).allMatch(each -> each.studentId().equals(room.first.id()));
      assertThat(done.added()).hasSize(5).allMatch(each -> each.studentId().equals(late.id()));
      assertThat(done.added().get(0).control()).isTrue();
      assertThat(done.added()).allMatch(each -> room.cloth.id().equals(each.clothId()));
      List<PlannedPiece> after = room.book.lessons().planOf(lesson.id());
      assertThat(after).contains(logged);
      assertThat(after)
          .filteredOn(each -> each.studentId().equals(room.second.id()))
          .isEqualTo(
              before.stream().filter(each -> each.studentId().equals(room.second.id())).toList());
      assertThat(after).extracting(PlannedPiece::code).doesNotHaveDuplicates();
      // A label that is out is still found, though its piece was taken back.
      assertThat(room.book.lessons().plannedByCode(done.back().get(0).code())).isNotNull();
      assertThat(again(room, lesson).value().added()).isEmpty();
    }
  }

  @Test
  void readingsMadeStayAndTheRestIsSharedOutAmongWhoIsHere() {
    try (Classroom room = Classroom.in(folder.resolve("g.walebook"))) {
      ReadLimits.Typed onlyA =
          new ReadLimits.Typed(List.of(), List.of("cloth b", "cloth c"), List.of());
      Lesson lesson =
          new TakeUpLesson(room.book, Classroom.CLOCK)
              .takeUp(
                  Packs.named("measuring-stretch"),
                  room.schoolClass.id(),
                  DAY,
                  Map.of("a", room.cloth.id()),
                  onlyA,
                  5)
              .value();
      List<ReadingLine> before = room.book.readingPlans().of(lesson.id());
      assertThat(before).hasSize(4);
      ReadingLine begun =
          before.stream()
              .filter(each -> each.planned().studentId().equals(room.first.id()))
              .findFirst()
              .orElseThrow();
      measure(room, begun.planned());
      room.book.enrolments().leave(room.schoolClass.id(), room.first.id(), DAY);
      Student late =
          new EnrolStudents(room.book, Classroom.CLOCK)
              .enrol(room.schoolClass.id(), "Cy Late")
              .added()
              .get(0);
      ReplanLesson.Replanned done = again(room, lesson).value();
      assertThat(done.notToMeasure())
          .singleElement()
          .matches(each -> each.studentId().equals(room.first.id()) && each.dropped());
      assertThat(done.toMeasure())
          .hasSize(2)
          .allMatch(each -> each.studentId().equals(late.id()))
          .allMatch(each -> room.cloth.id().equals(each.clothId()));
      List<ReadingLine> after = room.book.readingPlans().of(lesson.id());
      assertThat(after).anyMatch(each -> each.planned().equals(begun.planned()));
      assertThat(after)
          .filteredOn(each -> each.planned().studentId().equals(room.second.id()))
          .isEqualTo(
              before.stream()
                  .filter(each -> each.planned().studentId().equals(room.second.id()))
                  .toList());
      ReplanLesson.Replanned same = again(room, lesson).value();
      assertThat(same.handedOut() + same.takenBack()).isZero();
    }
  }

  private static void measure(Classroom room, PlannedReading planned) {
    room.book
        .clothLog()
        .add(
            room.reading(
                room.cloth, planned.lessonId(), planned.studentId(), planned.grain(), 140));
  }

  @Test
  void anEmptyClassIsTold() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      Lesson lesson = taken(room, ReadLimits.Typed.NOTHING);
      room.book.enrolments().leave(room.schoolClass.id(), room.first.id(), DAY);
      room.book.enrolments().leave(room.schoolClass.id(), room.second.id(), DAY);
      assertThat(again(room, lesson).problems())
          .extracting(Problem::code)
          .containsExactly("lesson.no-students");
      assertThat(room.book.lessons().planOf(lesson.id())).isNotEmpty();
    }
  }

  @Test
  void limitsAsTypedAreReadAndKeptTo() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      ReadLimits.Typed typed =
          new ReadLimits.Typed(
              List.of("width=3", "cloth=a, length=1.5"), List.of("S01=cloth b"), List.of("s02=5"));
      Lesson lesson = taken(room, typed);
      Map<UUID, Integer> share = new HashMap<>();
      for (PlannedPiece each : room.book.lessons().planOf(lesson.id())) {
        share.merge(each.studentId(), each.control() ? 0 : 1, Integer::sum);
        if (!each.control()) {
          assertThat(each.cell()).doesNotContain("width=3");
          assertThat(each.studentId().equals(room.first.id()) && each.cell().contains("cloth=b"))
              .isFalse();
        }
      }
      assertThat(share).containsEntry(room.first.id(), 2).containsEntry(room.second.id(), 5);
    }
  }

  @Test
  void whatWasLeftOutStaysLeftOut() {
    try (Classroom room = Classroom.in(folder.resolve("f.walebook"))) {
      new EnrolStudents(room.book, Classroom.CLOCK)
          .enrol(room.schoolClass.id(), "Di One\nEd Two\nFay Three");
      Lesson lesson = taken(room, new ReadLimits.Typed(List.of("width=3"), List.of(), List.of()));
      new EnrolStudents(room.book, Classroom.CLOCK).enrol(room.schoolClass.id(), "Gus Late");
      ReplanLesson.Replanned done = again(room, lesson).value();
      assertThat(done.back()).isEmpty();
      assertThat(done.added()).hasSize(5).noneMatch(each -> each.cell().contains("width=3"));
    }
  }

  @Test
  void aClothThatNobodyHasIsNotAskedFor() {
    try (Classroom room = Classroom.in(folder.resolve("d.walebook"))) {
      ReadLimits.Typed noRib = new ReadLimits.Typed(List.of(), List.of("cloth b"), List.of());
      Answer<Lesson> answer =
          new TakeUpLesson(room.book, Classroom.CLOCK)
              .takeUp(
                  Packs.seam(), room.schoolClass.id(), DAY, Map.of("a", room.cloth.id()), noRib, 5);
      assertThat(answer.isGood()).isTrue();
      assertThat(room.book.lessons().planOf(answer.value().id()))
          .allMatch(each -> each.clothId() != null);
    }
  }

  @Test
  void mistakesInLimitsAreSaidAllAtOnce() {
    try (Classroom room = Classroom.in(folder.resolve("e.walebook"))) {
      List<Student> students = List.of(room.first, room.second);
      var plan = Packs.seam().plan();
      ReadLimits.Typed typed =
          new ReadLimits.Typed(
              List.of("width=9"),
              List.of("S09=overlocker", "tractor", "cloth q"),
              List.of("S01=none", "S01=0", "S07=2"));
      assertThat(ReadLimits.of(typed, plan, students).problems())
          .extracting(Problem::code)
          .containsExactly(
              "lesson.left-out-unknown",
              "choice.unknown",
              "lesson.without-unknown",
              "lesson.without-unknown",
              "number.not-a-number",
              "number.too-small",
              "choice.unknown");
      assertThat(code(List.of(), List.of("sewing"), List.of(), room))
          .containsExactly("lesson.nothing-to-sew-at-all");
      assertThat(code(List.of(), List.of("S02=sewing"), List.of(), room))
          .containsExactly("lesson.nothing-to-sew");
      assertThat(code(List.of("width=1"), List.of(), List.of("S02=9"), room))
          .containsExactly("lesson.share-too-large");
      assertThat(code(List.of(), List.of(), List.of("12"), room)).isEmpty();
    }
  }

  private static List<String> code(
      List<String> out, List<String> without, List<String> share, Classroom room) {
    return ReadLimits.of(
            new ReadLimits.Typed(out, without, share),
            Packs.seam().plan(),
            List.of(room.first, room.second))
        .problems()
        .stream()
        .map(Problem::code)
        .toList();
  }
}
