package walebook.act.history;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.classroom.StartClass;
import walebook.act.lesson.ReadLimits;
import walebook.act.lesson.ReplanLesson;
import walebook.act.lesson.TakenUp;
import walebook.book.Classroom;
import walebook.record.By;
import walebook.record.Lesson;
import walebook.words.Words;

class SayChangeTest {
  @TempDir Path folder;

  @Test
  void aStepIsCalledByWhatItWasDoneFor() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      StepBack steps = new StepBack(room.book, new SayChange(room.book, Words.english(), false));
      Lesson lesson = TakenUp.seam(room);
      StepBack.Offer offer = requireNonNull(steps.undo((UUID) null));
      assertThat(offer.says()).isEqualTo("took up the lesson " + lesson.title());
      steps.undo(offer, By.NOBODY);
      assertThat(requireNonNull(steps.redo((UUID) null)).says())
          .isEqualTo("took up the lesson " + lesson.title());
      steps.redo(requireNonNull(steps.redo((UUID) null)), By.NOBODY);
      LocalDate today = LocalDate.now(Classroom.CLOCK);
      room.book.enrolments().leave(room.schoolClass.id(), room.second.id(), today);
      new ReplanLesson(room.book, Classroom.CLOCK)
          .replan(lesson, ReadLimits.Typed.NOTHING, 2)
          .value();
      assertThat(last(steps)).isEqualTo("planned the lesson again: " + lesson.title());
      new StartClass(room.book, Classroom.CLOCK)
          .start(new StartClass.Typed("Quay house", "", "", "", "", "", "Ina Mole\nJon Sand"))
          .value();
      assertThat(last(steps)).isEqualTo("began the class Quay house");
    }
  }

  private static String last(StepBack steps) {
    return requireNonNull(steps.undo((UUID) null)).says();
  }
}
