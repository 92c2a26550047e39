package walebook.act.classroom;

import java.time.Clock;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.SchoolClass;
import walebook.record.Stamp;
import walebook.record.Term;
import walebook.record.Tutor;

/** Begins a class: its term, its tutor and its students, all in one step. */
public final class StartClass {
  private final Book book;
  private final Clock clock;

  public StartClass(Book book, Clock clock) {
    this.book = book;
    this.clock = clock;
  }

  /**
   * What was typed.
   *
   * @param startsOn first day of the term as an ISO date; empty for today
   * @param endsOn last day; empty for twelve weeks on
   * @param students names, one a line
   */
  public record Typed(
      String className,
      String meets,
      String termName,
      String startsOn,
      String endsOn,
      String tutor,
      String students) {}

  /** Saves the class with its students, or says what is in the way. */
  public Answer<SchoolClass> start(Typed typed) {
    List<Problem> problems = new ArrayList<>();
    need(typed.className(), "class-name", problems);
    LocalDate from = date(typed.startsOn(), "term-starts", problems);
    LocalDate to = date(typed.endsOn(), "term-ends", problems);
    LocalDate startsOn = from == null ? LocalDate.now(clock) : from;
    LocalDate endsOn = to == null ? startsOn.plusWeeks(12) : to;
    if (endsOn.isBefore(startsOn)) {
      problems.add(
          Problem.refuse(
              "date.before-start", Place.field("term-ends"), typed.endsOn(), startsOn.toString()));
    }
    problems.addAll(EnrolStudents.twice(typed.students()));
    if (!problems.isEmpty()) {
      return Answer.bad(problems);
    }
    return Answer.good(book.inOneStep(() -> save(typed, startsOn, endsOn)));
  }

  private SchoolClass save(Typed typed, LocalDate startsOn, LocalDate endsOn) {
    Stamp fresh = Stamp.fresh(clock.instant());
    String termName = typed.termName().isBlank() ? startsOn.toString() : typed.termName().strip();
    Term term = new Term(Ids.next(), termName, startsOn, endsOn, fresh);
    book.terms().add(term);
    Tutor tutor = null;
    if (!typed.tutor().isBlank()) {
      tutor = new Tutor(Ids.next(), typed.tutor().strip(), fresh);
      book.tutors().add(tutor);
    }
    SchoolClass begun =
        new SchoolClass(
            Ids.next(),
            term.id(),
            tutor == null ? null : tutor.id(),
            typed.className().strip(),
            typed.meets().strip(),
            fresh);
    book.classes().add(begun);
    new EnrolStudents(book, clock).enrol(begun.id(), typed.students());
    return begun;
  }

  private static void need(String text, String field, List<Problem> problems) {
    if (text.isBlank()) {
      problems.add(Problem.refuse("field.needed", Place.field(field), "", ""));
    }
  }

  private static @Nullable LocalDate date(String text, String field, List<Problem> problems) {
    if (text.isBlank()) {
      return null;
    }
    try {
      return LocalDate.parse(text.strip());
    } catch (DateTimeParseException e) {
      problems.add(
          Problem.refuse("date.not-a-date", Place.field(field), text.strip(), "2026-09-01"));
      return null;
    }
  }
}
