package walebook.compare;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.book.ResultFilter;
import walebook.record.DoneLine;
import walebook.record.Lesson;
import walebook.record.PlannedPiece;
import walebook.record.ReadingLine;
import walebook.record.Student;

/**
 * Who has logged what.
 *
 * @param lessons the class's lessons, first to last
 * @param rows one for each student, by name
 */
public record ClassProgress(List<Lesson> lessons, List<Row> rows) {

  /**
   * One student.
   *
   * @param perLesson done and planned, in the order of the lessons
   * @param own pieces logged without a plan, or planned for a garment
   * @param readings readings of cloths
   * @param last when the newest piece was sewn
   */
  public record Row(
      Student student, List<Done> perLesson, int own, int readings, @Nullable LocalDate last) {
    public Row {
      perLesson = List.copyOf(perLesson);
    }

    /** Planned pieces that are logged; readings are none of them. */
    public int logged() {
      return perLesson.stream().mapToInt(Done::pieces).sum();
    }

    /** Planned pieces; readings are none of them. */
    public int planned() {
      return perLesson.stream().mapToInt(Done::piecesPlanned).sum();
    }
  }

  /**
   * What is done of a student's part of a lesson's plan.
   *
   * @param pieces planned pieces that are logged
   * @param measured readings made of those asked for
   * @param toMeasure readings asked for
   */
  public record Done(int pieces, int piecesPlanned, int measured, int toMeasure) {
    /** Pieces and readings done. */
    public int logged() {
      return pieces + measured;
    }

    /** Pieces and readings asked for. */
    public int planned() {
      return piecesPlanned + toMeasure;
    }
  }

  public ClassProgress {
    lessons = List.copyOf(lessons);
    rows = List.copyOf(rows);
  }

  /** Reads a class's progress from the book. */
  public static ClassProgress of(Book book, UUID classId) {
    return of(book, classId, Set.of());
  }

  /**
   * The progress in some of the lessons.
   *
   * @param lessonIds empty for all lessons and for pieces without one
   */
  public static ClassProgress of(Book book, UUID classId, Set<UUID> lessonIds) {
    return of(book, classId, lessonIds, book.results().done(ResultFilter.ALL.ofClass(classId)));
  }

  private static ClassProgress of(
      Book book, UUID classId, Set<UUID> lessonIds, Collection<DoneLine> done) {
    Logged logged = new Logged(lessonIds);
    done.forEach(logged::add);
    return of(book, classId, lessonIds, logged);
  }

  /** What the pieces of some lessons, or of all, come to; told one by one and not kept. */
  public static final class Logged {
    private static final Hand NONE = new Hand();

    private final Set<UUID> lessonIds;
    private final Map<UUID, Hand> hands = new HashMap<>();

    private static final class Hand {
      private final Set<UUID> planned = new HashSet<>();
      private int own;
      private @Nullable LocalDate last;
    }

    /**
     * Begins with none.
     *
     * @param lessonIds empty for all lessons and for pieces without one
     */
    public Logged(Set<UUID> lessonIds) {
      this.lessonIds = Set.copyOf(lessonIds);
    }

    /** One more piece. */
    public void add(DoneLine piece) {
      UUID lesson = piece.lessonId();
      if (!lessonIds.isEmpty() && (lesson == null || !lessonIds.contains(lesson))) {
        return;
      }
      Hand hand = hands.computeIfAbsent(piece.studentId(), key -> new Hand());
      UUID planned = piece.plannedId();
      if (planned == null) {
        hand.own++;
      } else {
        hand.planned.add(planned);
      }
      LocalDate last = hand.last;
      hand.last = last == null || piece.sewnOn().isAfter(last) ? piece.sewnOn() : last;
    }

    private Hand of(Student student) {
      return hands.getOrDefault(student.id(), NONE);
    }
  }

  /**
   * The same where the class's pieces were told already; to be read in the same step.
   *
   * @param logged of the same lessons
   */
  public static ClassProgress of(Book book, UUID classId, Set<UUID> lessonIds, Logged logged) {
    List<Lesson> lessons =
        book.lessons().of(classId).stream()
            .filter(each -> lessonIds.isEmpty() || lessonIds.contains(each.id()))
            .toList();
    Map<UUID, Long> readings =
        book.clothLog().allReadings().stream()
            .filter(each -> classId.equals(each.classId()) && each.measuredBy() != null)
            .collect(
                Collectors.groupingBy(
                    each -> java.util.Objects.requireNonNull(each.measuredBy()),
                    Collectors.counting()));
    Map<UUID, List<PlannedPiece>> plans =
        lessons.stream()
            .flatMap(lesson -> book.lessons().planOf(lesson.id()).stream())
            .collect(Collectors.groupingBy(PlannedPiece::studentId));
    Map<UUID, List<ReadingLine>> toMeasure =
        book.readingPlans().ofClass(classId).stream()
            .collect(Collectors.groupingBy(each -> each.planned().studentId()));
    List<Row> rows = new ArrayList<>();
    for (Student student : book.enrolments().studentsOf(classId)) {
      rows.add(
          row(
              student,
              lessons,
              plans.getOrDefault(student.id(), List.of()),
              toMeasure.getOrDefault(student.id(), List.of()),
              logged.of(student),
              readings.getOrDefault(student.id(), 0L).intValue()));
    }
    return new ClassProgress(lessons, rows);
  }

  private static Row row(
      Student student,
      List<Lesson> lessons,
      List<PlannedPiece> plan,
      List<ReadingLine> toMeasure,
      Logged.Hand hand,
      int readings) {
    List<Done> perLesson = new ArrayList<>();
    for (Lesson lesson : lessons) {
      List<PlannedPiece> asked =
          plan.stream()
              .filter(each -> each.lessonId().equals(lesson.id()) && !each.isForGarment())
              .toList();
      int logged = (int) asked.stream().filter(each -> hand.planned.contains(each.id())).count();
      List<ReadingLine> lines =
          toMeasure.stream().filter(each -> each.planned().lessonId().equals(lesson.id())).toList();
      perLesson.add(
          new Done(
              logged,
              asked.size(),
              lines.stream().mapToInt(ReadingLine::done).sum(),
              lines.stream().mapToInt(each -> each.planned().repeats()).sum()));
    }
    // Asked for by a garment of the student's own, and no part of what the lesson dealt.
    int forGarments =
        (int)
            plan.stream()
                .filter(each -> each.isForGarment() && hand.planned.contains(each.id()))
                .count();
    return new Row(student, perLesson, hand.own + forGarments, readings, hand.last);
  }
}
