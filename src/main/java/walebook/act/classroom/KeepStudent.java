package walebook.act.classroom;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import walebook.book.Book;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.Student;
import walebook.record.Tier;

/** Changes a student's name, alias or tier, or notes that they left. */
public final class KeepStudent {
  private final Book book;
  private final Clock clock;

  public KeepStudent(Book book, Clock clock) {
    this.book = book;
    this.clock = clock;
  }

  public Answer<Student> change(Student student, String name, String alias, Tier tier) {
    List<Problem> problems = new ArrayList<>();
    if (name.isBlank()) {
      problems.add(Problem.refuse("field.needed", Place.field("student-name"), "", ""));
    }
    if (alias.isBlank()) {
      problems.add(Problem.refuse("field.needed", Place.field("student-alias"), "", "S01"));
    } else if (isTaken(student, alias.strip())) {
      problems.add(Problem.refuse("alias.taken", Place.field("student-alias"), alias.strip(), ""));
    }
    if (!problems.isEmpty()) {
      return Answer.bad(problems);
    }
    Student changed =
        new Student(
            student.id(), name.strip(), alias.strip(), tier, student.stamp().next(clock.instant()));
    book.students().update(changed);
    return Answer.good(changed);
  }

  private boolean isTaken(Student student, String alias) {
    return book.students().all().stream()
        .anyMatch(each -> each.alias().equals(alias) && !each.id().equals(student.id()));
  }

  /** Takes a student off the class's list; what was logged stays. */
  public void leave(UUID classId, Student student) {
    book.enrolments().leave(classId, student.id(), LocalDate.now(clock));
  }
}
