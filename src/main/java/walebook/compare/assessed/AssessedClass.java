package walebook.compare.assessed;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.book.ResultFilter;
import walebook.record.Criterion;
import walebook.record.DoneLine;
import walebook.record.Lesson;
import walebook.record.RecordTally;
import walebook.record.SchoolClass;
import walebook.record.Student;
import walebook.record.Term;
import walebook.working.Message;

/**
 * What an assessor asks about a class.
 *
 * @param criteria in the course's order
 * @param students those who have not left, by name
 * @param lessons first to last
 * @param pieces that speak for a criterion or were looked over, in the order they were sewn
 * @param term null when the book has none for the class
 * @param tally how many records the class has, and the last change of one
 */
public record AssessedClass(
    List<Criterion> criteria,
    List<Student> students,
    List<Lesson> lessons,
    List<AssessedPiece> pieces,
    @Nullable Term term,
    RecordTally tally) {
  private static final DateTimeFormatter MINUTE =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

  /** A class of which nothing is known. */
  public static final AssessedClass NONE =
      new AssessedClass(List.of(), List.of(), List.of(), List.of(), null, RecordTally.NONE);

  public AssessedClass {
    criteria = List.copyOf(criteria);
    students = List.copyOf(students);
    lessons = List.copyOf(lessons);
    pieces = List.copyOf(pieces);
  }

  /** Reads it from the book as it is at one moment. */
  public static AssessedClass of(Book book, UUID classId) {
    return book.inOneStep(
        () -> of(book, classId, book.results().done(ResultFilter.ALL.ofClass(classId))));
  }

  private static AssessedClass of(Book book, UUID classId, Collection<DoneLine> done) {
    LookOver look = LookOver.of(book, classId);
    List<AssessedPiece> pieces = new ArrayList<>();
    for (DoneLine line : done) {
      AssessedPiece piece = look.at(line);
      if (piece != null) {
        pieces.add(piece);
      }
    }
    return of(book, classId, pieces);
  }

  /**
   * The same where the class's pieces were looked at already; to be read in the same step.
   *
   * @param pieces all or some of those that {@link LookOver} made
   */
  public static AssessedClass of(Book book, UUID classId, List<AssessedPiece> pieces) {
    SchoolClass of = book.classes().find(classId);
    return new AssessedClass(
        book.assessments().criteriaOf(classId),
        book.enrolments().studentsOf(classId),
        book.lessons().of(classId),
        pieces.stream()
            .sorted(Comparator.comparing(AssessedPiece::sewnOn).thenComparing(AssessedPiece::code))
            .toList(),
        of == null ? null : book.terms().find(of.termId()),
        book.assessments().tallyOf(classId));
  }

  /** True when nothing was ever asked for or looked over. */
  public boolean isEmpty() {
    return criteria.isEmpty() && pieces.isEmpty();
  }

  /** Students against criteria. */
  public Coverage coverage() {
    return Coverage.of(criteria, students, pieces);
  }

  /** How much of the term is left. */
  public TimeLeft timeLeft(LocalDate today) {
    return TimeLeft.of(
        term == null ? null : term.endsOn(),
        lessons.stream().map(Lesson::taughtOn).toList(),
        today);
  }

  /** The same of some students and lessons; empty for all. Pieces without a lesson go with all. */
  public AssessedClass only(Set<UUID> studentIds, Set<UUID> lessonIds) {
    return new AssessedClass(
        criteria,
        students.stream()
            .filter(each -> studentIds.isEmpty() || studentIds.contains(each.id()))
            .toList(),
        lessons,
        pieces.stream()
            .filter(each -> studentIds.isEmpty() || studentIds.contains(each.studentId()))
            .filter(
                each ->
                    lessonIds.isEmpty()
                        || (each.lessonId() != null && lessonIds.contains(each.lessonId())))
            .toList(),
        term,
        tally);
  }

  /** How many records the class has and when one was last changed, told in a zone's time. */
  public Message tallySays(ZoneId zone) {
    Instant last = tally.lastChange();
    return last == null
        ? Message.of("compare.assessed.no-records")
        : Message.of(
            "compare.assessed.tally",
            String.valueOf(tally.records()),
            String.valueOf(tally.pieces()),
            String.valueOf(tally.checks()),
            String.valueOf(tally.comments()),
            MINUTE.withZone(zone).format(last));
  }

  /** The codes of the criteria that a piece speaks for, in the course's order. */
  public String codesOf(AssessedPiece piece) {
    return criteria.stream()
        .filter(each -> piece.criteria().contains(each.id()))
        .map(Criterion::code)
        .collect(Collectors.joining(", "));
  }
}
