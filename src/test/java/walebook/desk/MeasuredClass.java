package walebook.desk;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import walebook.act.lesson.TakeUpLesson;
import walebook.book.Classroom;
import walebook.book.Ids;
import walebook.lesson.LessonPack;
import walebook.lesson.Packs;
import walebook.record.Cloth;
import walebook.record.Edge;
import walebook.record.Lesson;
import walebook.record.ReadingLine;

/** A class that took up a lesson of readings, on cloths of its own, for tests. */
public final class MeasuredClass {
  private static final List<String> NAMES = List.of("Red jersey", "White rib", "Blue knit", "Sand");

  private MeasuredClass() {}

  /** Takes up the lesson on measuring stretch on the day of the class. */
  public static Lesson of(Classroom room) {
    return of(room, "measuring-stretch", LocalDate.of(2026, 10, 5));
  }

  /** Takes up a pack that measures; its cloths a, b, c, d are red, white, blue and sand. */
  public static Lesson of(Classroom room, String name, LocalDate on) {
    LessonPack pack = Packs.named(name);
    Map<String, UUID> cloths = new HashMap<>();
    for (int i = 0; i < pack.plan().cloths().size(); i++) {
      cloths.put(pack.plan().cloths().get(i).slot(), cloth(room, NAMES.get(i)));
    }
    return new TakeUpLesson(room.book, Classroom.CLOCK)
        .takeUp(pack, room.schoolClass.id(), on, cloths, 20261005)
        .value();
  }

  private static UUID cloth(Classroom room, String name) {
    return room.book.cloths().all().stream()
        .filter(each -> each.name().equals(name))
        .map(Cloth::id)
        .findFirst()
        .orElseGet(
            () -> {
              Cloth made =
                  new Cloth(
                      Ids.next(),
                      name,
                      "single-jersey",
                      "cotton",
                      null,
                      null,
                      1500.0,
                      null,
                      Edge.UNKNOWN,
                      "",
                      false,
                      Classroom.FRESH);
              room.book.cloths().add(made);
              return made.id();
            });
  }

  /** What the first student is to measure in a lesson. */
  public static List<ReadingLine> mine(Classroom room, Lesson lesson) {
    return room.book.readingPlans().of(lesson.id()).stream()
        .filter(each -> each.planned().studentId().equals(room.first.id()))
        .toList();
  }
}
