package walebook.act.lesson;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.lesson.LessonPack;
import walebook.lesson.PieceToSew;
import walebook.lesson.PiecesPlan;
import walebook.lesson.Plan;
import walebook.lesson.PlanPieces;
import walebook.lesson.PlanStudent;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.Lesson;
import walebook.record.PieceCode;
import walebook.record.PlannedPiece;
import walebook.record.Stamp;

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
    List<Problem> problems = new ArrayList<>();
    if (pack.plan() instanceof PiecesPlan pieces) {
      for (Plan.ClothSlot slot : pieces.cloths()) {
        if (!clothOfSlot.containsKey(slot.slot())) {
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
    return Answer.good(book.inOneStep(() -> save(pack, classId, on, clothOfSlot, seed)));
  }

  private Lesson save(
      LessonPack pack, UUID classId, LocalDate on, Map<String, UUID> clothOfSlot, long seed) {
    Stamp fresh = Stamp.fresh(clock.instant());
    UUID packId = KeepPack.in(book, pack, fresh);
    Lesson lesson = new Lesson(Ids.next(), classId, packId, pack.about().title(), on, fresh);
    book.lessons().add(lesson);
    if (pack.plan() instanceof PiecesPlan plan) {
      List<PlanStudent> students =
          book.enrolments().studentsOf(classId).stream()
              .map(each -> new PlanStudent(each.id(), each.tier()))
              .toList();
      List<PieceToSew> pieces =
          PlanPieces.plan(plan, pack.measure().readings(), students, clothOfSlot, seed);
      book.lessons().plan(planned(pieces, lesson.id(), fresh, new Random(seed)));
    }
    return lesson;
  }

  private List<PlannedPiece> planned(
      List<PieceToSew> pieces, UUID lessonId, Stamp fresh, Random chance) {
    Set<String> drawn = new HashSet<>();
    List<PlannedPiece> planned = new ArrayList<>();
    for (PieceToSew each : pieces) {
      String code = PieceCode.draw(chance);
      while (!drawn.add(code) || book.lessons().isCodeTaken(code)) {
        code = PieceCode.draw(chance);
      }
      planned.add(HandOut.piece(each, lessonId, code, fresh));
    }
    return planned;
  }
}
