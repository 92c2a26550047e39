package walebook.desk.lessons;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.classroom.EnrolStudents;
import walebook.act.lesson.TakeUpLesson;
import walebook.book.Classroom;
import walebook.desk.MeasuredClass;
import walebook.desk.Sessions;
import walebook.desk.common.Session;
import walebook.lesson.Packs;
import walebook.record.Lesson;

class PlanAgainViewModelTest {
  @TempDir Path folder;

  @Test
  void saysWhatANewPlanChanged() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      LocalDate day = LocalDate.of(2026, 10, 5);
      Lesson lesson =
          new TakeUpLesson(room.book, Classroom.CLOCK)
              .takeUp(
                  Packs.seam(),
                  room.schoolClass.id(),
                  day,
                  Map.of("a", room.cloth.id(), "b", room.cloth.id()),
                  1)
              .value();
      Session session = Sessions.of(room);
      PlanAgainViewModel model = new PlanAgainViewModel(session);
      int before = session.changesProperty().get();
      model.again(lesson);
      assertThat(model.noticeProperty().get().says())
          .isEqualTo(session.words().say("desk.lessons.plan.same"));
      new EnrolStudents(room.book, Classroom.CLOCK).enrol(room.schoolClass.id(), "Cy Late");
      model.again(lesson);
      assertThat(model.noticeProperty().get().says())
          .isEqualTo(session.words().say("desk.lessons.plan.changed", 5, 0));
      assertThat(session.changesProperty().get()).isEqualTo(before + 2);
      room.book.enrolments().studentsOf(room.schoolClass.id()).stream()
          .forEach(each -> room.book.enrolments().leave(room.schoolClass.id(), each.id(), day));
      model.again(lesson);
      assertThat(model.noticeProperty().get().says())
          .isEqualTo(session.words().say("problem.lesson.no-students"));
      model.forget();
      assertThat(model.noticeProperty().get().says()).isEmpty();
    }
  }

  @Test
  void saysWhatANewPlanOfReadingsChanged() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      Lesson lesson = MeasuredClass.of(room);
      Session session = Sessions.of(room);
      PlanAgainViewModel model = new PlanAgainViewModel(session);
      new EnrolStudents(room.book, Classroom.CLOCK).enrol(room.schoolClass.id(), "Cy Late");
      model.again(lesson);
      assertThat(model.noticeProperty().get().says())
          .isEqualTo(session.words().say("desk.lessons.plan.changed-readings", 4, 0));
    }
  }
}
