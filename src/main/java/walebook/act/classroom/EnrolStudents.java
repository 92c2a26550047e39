package walebook.act.classroom;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.record.Stamp;
import walebook.record.Student;
import walebook.record.Tier;

/** Adds students to a class by their names, each with an alias for the projector and exports. */
public final class EnrolStudents {
  private final Book book;
  private final Clock clock;

  public EnrolStudents(Book book, Clock clock) {
    this.book = book;
    this.clock = clock;
  }

  /**
   * Adds names, one a line; blank lines and names that are in the class already are passed over.
   *
   * @return those that were added
   */
  public List<Student> enrol(UUID classId, String names) {
    return book.inOneStep(
        () -> {
          Set<String> there = new HashSet<>();
          book.enrolments()
              .everyoneOf(classId)
              .forEach(each -> there.add(each.name().toLowerCase(Locale.ROOT)));
          Set<String> aliases = new HashSet<>();
          book.students().all().forEach(each -> aliases.add(each.alias()));
          List<Student> added = new ArrayList<>();
          for (String line : names.split("\\R")) {
            String name = line.strip().replaceAll("\\s+", " ");
            if (!name.isEmpty() && there.add(name.toLowerCase(Locale.ROOT))) {
              added.add(add(classId, name, free(aliases)));
            }
          }
          return added;
        });
  }

  private Student add(UUID classId, String name, String alias) {
    Student student =
        new Student(Ids.next(), name, alias, Tier.STANDARD, Stamp.fresh(clock.instant()));
    book.students().add(student);
    book.enrolments().join(classId, student.id(), LocalDate.now(clock));
    return student;
  }

  /** The first free code for a student; from then on it is taken. */
  public static String free(Set<String> taken) {
    int next = 1;
    while (!taken.add(String.format(Locale.ROOT, "S%02d", next))) {
      next++;
    }
    return String.format(Locale.ROOT, "S%02d", next);
  }
}
