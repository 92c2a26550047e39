package walebook.act.lesson;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.lesson.LessonPack;
import walebook.lesson.PieceToSew;
import walebook.lesson.PiecesPlan;
import walebook.lesson.Plan;
import walebook.lesson.PlanPieces;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.Lesson;
import walebook.record.Stamp;
import walebook.record.Student;

/**
 * Takes a pack up for a class: keeps the pack as it is now, adds the lesson and hands each student
 * their pieces, all in one step.
 */
public final class TakeUpLesson {
  private final Book book;
  private final Clock clock;

  public TakeUpLesson(Book book, Clock clock) {
    this.book = book;
    this.clock = clock;
  }

  /**
   * Takes up a pack.
   *
   * @param clothOfSlot the room's cloth for each cloth of the plan; all slots of a plan of pieces
   *     are needed
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
    if (pack.plan() instanceof PiecesPlan pieces) {
      for (Plan.ClothSlot slot : pieces.cloths()) {
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
    }
    if (!problems.isEmpty()) {
      return Answer.bad(problems);
    }
    PlanPieces.Ask ask =
        pack.plan() instanceof PiecesPlan plan
            ? new PlanPieces.Ask(
                plan,
                pack.measure().readings(),
                limits.of(students),
                clothOfSlot,
                limits.leftOut(),
                seed)
            : null;
    List<PieceToSew> pieces = ask == null ? List.of() : PlanPieces.plan(ask);
    return Answer.good(book.inOneStep(() -> save(pack, classId, on, pieces, seed)));
  }

  private Lesson save(
      LessonPack pack, UUID classId, LocalDate on, List<PieceToSew> pieces, long seed) {
    Stamp fresh = Stamp.fresh(clock.instant());
    UUID packId = KeepPack.in(book, pack, fresh);
    Lesson lesson = new Lesson(Ids.next(), classId, packId, pack.about().title(), on, fresh);
    book.lessons().add(lesson);
    book.lessons().plan(HandOut.all(book, pieces, lesson.id(), fresh, new Random(seed)));
    return lesson;
  }
}
