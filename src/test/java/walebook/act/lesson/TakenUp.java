package walebook.act.lesson;

import java.time.LocalDate;
import java.util.Map;
import walebook.book.Classroom;
import walebook.lesson.Packs;
import walebook.record.Lesson;

/** A lesson that a class took up, for tests. */
public final class TakenUp {
  private TakenUp() {}

  /** The seam that stretches, both of its cloths being the room's one. */
  public static Lesson seam(Classroom room) {
    return new TakeUpLesson(room.book, Classroom.CLOCK)
        .takeUp(
            Packs.seam(),
            room.schoolClass.id(),
            LocalDate.of(2026, 10, 5),
            Map.of("a", room.cloth.id(), "b", room.cloth.id()),
            ReadLimits.Typed.NOTHING,
            1,
            true)
        .value();
  }
}
