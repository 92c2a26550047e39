package walebook.act.lesson;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.lesson.ClassToPlan;
import walebook.lesson.LessonPack;
import walebook.lesson.PieceToSew;
import walebook.lesson.PiecesPlan;
import walebook.lesson.Plan;
import walebook.lesson.PlanPieces;
import walebook.lesson.PlanReadings;
import walebook.lesson.ReadingsPlan;
import walebook.lesson.SettingKey;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.Lesson;
import walebook.record.Stamp;
import walebook.record.Student;

/**
 * Takes a pack up for a class: keeps the pack as it is now, adds the lesson and hands each student
 * their pieces or readings, all in one step.
 */
public final class TakeUpLesson {
  private final Book book;
  private final Clock clock;
  private final @Nullable String title;

  public TakeUpLesson(Book book, Clock clock) {
    this(book, clock, null);
  }

  private TakeUpLesson(Book book, Clock clock, @Nullable String title) {
    this.book = book;
    this.clock = clock;
    this.title = title;
  }

  /** The same act for a lesson that is not called as its pack is. */
  public TakeUpLesson titled(String lessonTitle) {
    return new TakeUpLesson(book, clock, lessonTitle);
  }

  /**
   * Takes up a pack, for one who is sure of the cloths.
   *
   * @param clothOfSlot the room's cloth for each cloth of the plan; all are needed
   * @param seed the same seed hands out the same plan with the same codes
   */
  public Answer<Lesson> takeUp(
      LessonPack pack, UUID classId, LocalDate on, Map<String, UUID> clothOfSlot, long seed) {
    return takeUp(pack, classId, on, clothOfSlot, ReadLimits.Typed.NOTHING, seed);
  }

  /** The same for a class that can't or needn't sew everything; a cloth nobody has isn't needed. */
  public Answer<Lesson> takeUp(
      LessonPack pack,
      UUID classId,
      LocalDate on,
      Map<String, UUID> clothOfSlot,
      ReadLimits.Typed typed,
      long seed) {
    return takeUp(pack, classId, on, clothOfSlot, typed, seed, true);
  }

  /**
   * The same.
   *
   * @param sure takes one cloth for two that the plan compares without asking
   */
  public Answer<Lesson> takeUp(
      LessonPack pack,
      UUID classId,
      LocalDate on,
      Map<String, UUID> clothOfSlot,
      ReadLimits.Typed typed,
      long seed,
      boolean sure) {
    if (!sure) {
      List<Problem> same = sameCloth(pack.plan(), clothOfSlot);
      if (!same.isEmpty()) {
        return Answer.bad(same);
      }
    }
    List<Student> students = book.enrolments().studentsOf(classId);
    return ReadLimits.of(typed, pack.plan(), students)
        .flatMap(limits -> takeUp(pack, classId, on, clothOfSlot, limits, students, seed));
  }

  private Answer<Lesson> takeUp(
      LessonPack pack,
      UUID classId,
      LocalDate on,
      Map<String, UUID> clothOfSlot,
      PlanLimits limits,
      List<Student> students,
      long seed) {
    List<Problem> problems = new ArrayList<>();
    for (Plan.ClothSlot slot : pack.plan().cloths()) {
      boolean unused = limits.isWithout(slot.slot(), students);
      if (!clothOfSlot.containsKey(slot.slot()) && !unused) {
        problems.add(
            Problem.refuse(
                "lesson.cloth-missing",
                Place.field("cloth-" + slot.slot()),
                slot.slot(),
                slot.says()));
      }
    }
    if (!problems.isEmpty()) {
      return Answer.bad(problems);
    }
    Stamp fresh = Stamp.fresh(clock.instant());
    return Answer.good(
        book.inOneStep(
            () -> {
              UUID packId = KeepPack.in(book, pack, fresh);
              String called = title == null ? pack.about().title() : title;
              Lesson lesson = new Lesson(Ids.next(), classId, packId, called, on, fresh);
              book.lessons().add(lesson);
              deal(lesson, pack, limits, students, clothOfSlot, seed);
              return lesson;
            }));
  }

  private void deal(
      Lesson lesson,
      LessonPack pack,
      PlanLimits limits,
      List<Student> students,
      Map<String, UUID> clothOfSlot,
      long seed) {
    Stamp stamp = lesson.stamp();
    ClassToPlan room = new ClassToPlan(limits.of(students), clothOfSlot, limits.leftOut(), seed);
    if (pack.plan() instanceof PiecesPlan plan) {
      List<PieceToSew> pieces =
          PlanPieces.plan(new PlanPieces.Ask(plan, pack.measure().readings(), room));
      book.lessons().plan(HandOut.all(book, pieces, lesson.id(), stamp, new Random(seed)));
    } else if (pack.plan() instanceof ReadingsPlan plan) {
      List<PlanReadings.ToMeasure> readings = PlanReadings.plan(new PlanReadings.Ask(plan, room));
      book.readingPlans().plan(HandOut.readings(readings, lesson.id(), stamp));
    }
  }

  /** A cloth compared with itself tells nothing: most likely a slip in the picking. */
  private static List<Problem> sameCloth(Plan plan, Map<String, UUID> clothOfSlot) {
    List<Problem> problems = new ArrayList<>();
    Map<UUID, String> seen = new HashMap<>();
    for (String slot : compared(plan)) {
      UUID cloth = clothOfSlot.get(slot);
      String before = cloth == null ? null : seen.putIfAbsent(cloth, slot);
      if (before != null) {
        problems.add(Problem.ask("lesson.cloths-same", Place.field("cloth-" + slot), before, slot));
      }
    }
    return problems;
  }

  /** The plan's cloths that it compares. */
  private static List<String> compared(Plan plan) {
    if (plan instanceof PiecesPlan pieces) {
      return pieces.factors().stream()
          .filter(each -> each.key() == SettingKey.CLOTH)
          .flatMap(each -> each.levels().stream())
          .toList();
    }
    return plan.cloths().stream().map(Plan.ClothSlot::slot).toList();
  }
}
