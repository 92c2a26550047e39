package walebook.act.lesson;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
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
import walebook.lesson.SettingKey;
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
   * Takes up a pack, for one who is sure of the cloths.
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
    if (!sure && pack.plan() instanceof PiecesPlan plan) {
      List<Problem> same = sameCloth(plan, clothOfSlot);
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

  /** A cloth compared with itself tells nothing: most likely a slip in the picking. */
  private static List<Problem> sameCloth(PiecesPlan plan, Map<String, UUID> clothOfSlot) {
    List<Problem> problems = new ArrayList<>();
    for (PiecesPlan.Factor factor : plan.factors()) {
      if (factor.key() != SettingKey.CLOTH) {
        continue;
      }
      Map<UUID, String> seen = new HashMap<>();
      for (String slot : factor.levels()) {
        UUID cloth = clothOfSlot.get(slot);
        String before = cloth == null ? null : seen.putIfAbsent(cloth, slot);
        if (before != null) {
          problems.add(
              Problem.ask("lesson.cloths-same", Place.field("cloth-" + slot), before, slot));
        }
      }
    }
    return problems;
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
