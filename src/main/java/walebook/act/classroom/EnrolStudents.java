package walebook.act.classroom;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.problem.Place;
import walebook.problem.Problem;
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
   * What became of the names.
   *
   * @param added the students that were added
   * @param already names that are on the list, or were typed twice
   * @param left names of those who were in the class and left it
   */
  public record Enrolled(List<Student> added, List<String> already, List<String> left) {
    public Enrolled {
      added = List.copyOf(added);
      already = List.copyOf(already);
      left = List.copyOf(left);
    }

    /** The names that were not added, one a line. */
    public String passedOver() {
      return String.join("\n", Stream.concat(already.stream(), left.stream()).toList());
    }

    /** Why they were not; empty when all were. */
    public List<Problem> problems() {
      if (!already.isEmpty()) {
        return List.of(passedOver("roster.already", already));
      }
      return left.isEmpty() ? List.of() : List.of(passedOver("roster.left", left));
    }

    private static Problem passedOver(String code, List<String> names) {
      return Problem.refuse(code, Place.field("students"), String.join(", ", names), "");
    }
  }

  /** Adds names, one a line, but for those that are or were in the class; blank lines are none. */
  public Enrolled enrol(UUID classId, String names) {
    return book.inOneStep(
        () -> {
          Set<String> there = keys(book.enrolments().studentsOf(classId));
          Set<String> gone = keys(book.enrolments().everyoneOf(classId));
          gone.removeAll(there);
          Set<String> aliases = new HashSet<>();
          book.students().all().forEach(each -> aliases.add(each.alias()));
          List<Student> added = new ArrayList<>();
          List<String> already = new ArrayList<>();
          List<String> left = new ArrayList<>();
          for (String name : each(names)) {
            if (gone.contains(key(name))) {
              left.add(name);
            } else if (there.add(key(name))) {
              added.add(add(classId, name, free(aliases)));
            } else {
              already.add(name);
            }
          }
          return new Enrolled(added, already, left);
        });
  }

  /** What stands twice in a list that is to be a new class. */
  static List<Problem> twice(String names) {
    Set<String> there = new HashSet<>();
    List<String> again = each(names).stream().filter(name -> !there.add(key(name))).toList();
    return new Enrolled(List.of(), again, List.of()).problems();
  }

  private static List<String> each(String names) {
    return names
        .lines()
        .map(line -> line.strip().replaceAll("\\s+", " "))
        .filter(name -> !name.isEmpty())
        .toList();
  }

  private static String key(String name) {
    return name.toLowerCase(Locale.ROOT);
  }

  private static Set<String> keys(List<Student> students) {
    Set<String> keys = new HashSet<>();
    students.forEach(each -> keys.add(key(each.name())));
    return keys;
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
