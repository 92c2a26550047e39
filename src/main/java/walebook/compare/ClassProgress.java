package walebook.compare;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
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
   * @param own pieces logged without a plan
   * @param readings readings of cloths
   * @param last when the newest piece was sewn
   */
  public record Row(
      Student student, List<Done> perLesson, int own, int readings, @Nullable LocalDate last) {
    public Row {
      perLesson = List.copyOf(perLesson);
    }

    public int logged() {
      return perLesson.stream().mapToInt(Done::logged).sum();
    }

    public int planned() {
      return perLesson.stream().mapToInt(Done::planned).sum();
    }
  }

  /** How many of a lesson's planned pieces are logged. */
  public record Done(int logged, int planned) {}

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

  /**
   * The same where the class's lines are at hand.
   *
   * @param done of all lessons
   */
  public static ClassProgress of(
      Book book, UUID classId, Set<UUID> lessonIds, Collection<DoneLine> done) {
    List<Lesson> lessons =
        book.lessons().of(classId).stream()
            .filter(each -> lessonIds.isEmpty() || lessonIds.contains(each.id()))
            .toList();
    Map<UUID, List<DoneLine>> pieces =
        done.stream()
            .filter(
                each ->
                    lessonIds.isEmpty()
                        || (each.lessonId() != null && lessonIds.contains(each.lessonId())))
            .collect(Collectors.groupingBy(DoneLine::studentId));
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
    List<Row> rows = new ArrayList<>();
    for (Student student : book.enrolments().studentsOf(classId)) {
      rows.add(
          row(
              student,
              lessons,
              plans.getOrDefault(student.id(), List.of()),
              pieces.getOrDefault(student.id(), List.of()),
              readings.getOrDefault(student.id(), 0L).intValue()));
    }
    return new ClassProgress(lessons, rows);
  }

  private static Row row(
      Student student,
      List<Lesson> lessons,
      List<PlannedPiece> plan,
      List<DoneLine> pieces,
      int readings) {
    Set<UUID> done =
        pieces.stream()
            .map(DoneLine::plannedId)
            .filter(java.util.Objects::nonNull)
            .collect(Collectors.toSet());
    List<Done> perLesson = new ArrayList<>();
    for (Lesson lesson : lessons) {
      List<PlannedPiece> asked =
          plan.stream().filter(each -> each.lessonId().equals(lesson.id())).toList();
      int logged = (int) asked.stream().filter(each -> done.contains(each.id())).count();
      perLesson.add(new Done(logged, asked.size()));
    }
    int own = (int) pieces.stream().filter(each -> each.plannedId() == null).count();
    LocalDate last = pieces.stream().map(DoneLine::sewnOn).max(LocalDate::compareTo).orElse(null);
    return new Row(student, perLesson, own, readings, last);
  }
}
