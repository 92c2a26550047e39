package walebook.act.lesson;

import java.time.Clock;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import walebook.act.piece.KeepDraft;
import walebook.book.Book;
import walebook.book.PieceFilter;
import walebook.lesson.ClassToPlan;
import walebook.lesson.LessonPack;
import walebook.lesson.PieceToSew;
import walebook.lesson.PiecesPlan;
import walebook.lesson.PlanPieces;
import walebook.lesson.ReadPack;
import walebook.lesson.ReadingsPlan;
import walebook.lesson.Replan;
import walebook.lesson.ReplanPieces;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.Lesson;
import walebook.record.PlannedPiece;
import walebook.record.PlannedReading;
import walebook.record.Stamp;
import walebook.record.Student;

/**
 * Plans a lesson again for who is in the class now. Logged pieces, those whose form is begun, and
 * what was measured stay as they are; what is open of students who left is taken back, newcomers
 * get a share.
 */
public final class ReplanLesson {
  private final Book book;
  private final Clock clock;

  public ReplanLesson(Book book, Clock clock) {
    this.book = book;
    this.clock = clock;
  }

  /**
   * What the new plan changed.
   *
   * @param added pieces handed out
   * @param back pieces taken back, their labels no longer good
   * @param toMeasure readings asked for
   * @param notToMeasure readings taken back
   */
  public record Replanned(
      Lesson lesson,
      List<PlannedPiece> added,
      List<PlannedPiece> back,
      List<PlannedReading> toMeasure,
      List<PlannedReading> notToMeasure) {
    public Replanned {
      added = List.copyOf(added);
      back = List.copyOf(back);
      toMeasure = List.copyOf(toMeasure);
      notToMeasure = List.copyOf(notToMeasure);
    }

    /** How much was handed out: pieces, or cloths to measure along a grain. */
    public int handedOut() {
      return added.size() + toMeasure.size();
    }

    /** How much was taken back. */
    public int takenBack() {
      return back.size() + notToMeasure.size();
    }

    /** Whether the lesson's plan is one of readings. */
    public boolean isMeasured() {
      return !toMeasure.isEmpty() || !notToMeasure.isEmpty();
    }
  }

  /**
   * Plans again.
   *
   * @param typed what the class can't or needn't sew now, beside what was left out before
   * @param seed the same seed on the same book gives the same plan
   */
  public Answer<Replanned> replan(Lesson lesson, ReadLimits.Typed typed, long seed) {
    List<Student> students = book.enrolments().studentsOf(lesson.classId());
    if (students.isEmpty()) {
      return Answer.bad(Problem.refuse("lesson.no-students", new Place.Whole(), "", ""));
    }
    return new ReadTaught(book, new ReadPack())
        .pack(lesson.packId())
        .flatMap(
            pack ->
                ReadLimits.of(typed, pack.plan(), students)
                    .map(limits -> replan(lesson, pack, limits, students, seed)));
  }

  private Replanned replan(
      Lesson lesson, LessonPack pack, PlanLimits limits, List<Student> students, long seed) {
    if (pack.plan() instanceof ReadingsPlan readings) {
      return new ReplanMeasuring(book, clock).replan(lesson, readings, limits, students, seed);
    }
    PiecesPlan plan = (PiecesPlan) pack.plan();
    List<PlannedPiece> all = book.lessons().planOf(lesson.id());
    List<PlannedPiece> now = all.stream().filter(each -> !each.isForGarment()).toList();
    int readings =
        now.stream()
            .mapToInt(each -> each.asked().readings())
            .max()
            .orElse(pack.measure().readings());
    PlanPieces.Ask ask =
        new PlanPieces.Ask(
            plan,
            readings,
            new ClassToPlan(
                limits.of(students),
                PlannedCloths.of(plan, now),
                leftOut(plan, now, limits),
                seed));
    Replan.Change<PieceToSew, String> change = ReplanPieces.of(ask, soFar(lesson, all));
    return book.inOneStep(() -> save(lesson, now, change, seed));
  }

  private static List<String> leftOut(PiecesPlan plan, List<PlannedPiece> now, PlanLimits limits) {
    return limits.leftOutOf(
        plan.cells().stream().map(PiecesPlan.Cell::label).toList(),
        now.stream().map(PlannedPiece::cell).toList());
  }

  private List<Replan.Has<String>> soFar(Lesson lesson, List<PlannedPiece> now) {
    Set<UUID> logged =
        book.pieces().list(PieceFilter.ALL.ofClass(lesson.classId())).stream()
            .map(each -> each.whose().plannedId())
            .filter(Objects::nonNull)
            .collect(Collectors.toCollection(HashSet::new));
    KeepDraft drafts = new KeepDraft(book);
    List<Replan.Has<String>> all = new ArrayList<>();
    now.stream()
        .collect(Collectors.groupingBy(PlannedPiece::studentId))
        .forEach(
            (student, pieces) -> {
              List<String> sewn = new ArrayList<>();
              List<String> open = new ArrayList<>();
              for (PlannedPiece each : pieces) {
                if (each.isForGarment()) {
                  continue;
                }
                boolean fixed =
                    logged.contains(each.id()) || drafts.find(student, each.id()) != null;
                (fixed ? sewn : open).add(each.cell());
              }
              int last = pieces.stream().mapToInt(PlannedPiece::place).max().orElse(0);
              all.add(new Replan.Has<>(student, sewn, open, last));
            });
    return all;
  }

  private Replanned save(
      Lesson lesson, List<PlannedPiece> now, Replan.Change<PieceToSew, String> change, long seed) {
    List<PlannedPiece> back = new ArrayList<>();
    for (Replan.Back<String> each : change.back()) {
      for (PlannedPiece piece : now) {
        if (piece.studentId().equals(each.student()) && piece.cell().equals(each.cell())) {
          PlannedPiece dropped = piece.takenBack(clock.instant());
          book.lessons().replan(dropped);
          back.add(dropped);
        }
      }
    }
    Stamp fresh = Stamp.fresh(clock.instant());
    List<PlannedPiece> added =
        HandOut.all(book, change.added(), lesson.id(), fresh, new Random(seed));
    book.lessons().plan(added);
    return new Replanned(lesson, added, back, List.of(), List.of());
  }
}
