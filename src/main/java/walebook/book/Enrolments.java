package walebook.book;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import walebook.record.Student;

/** Who is in which class. */
public interface Enrolments {
  /** Puts a student into a class; does nothing when already in it. */
  void join(UUID classId, UUID studentId, LocalDate joinedOn);

  /** Notes that a student left; what was logged stays. */
  void leave(UUID classId, UUID studentId, LocalDate leftOn);

  /** The students of a class who have not left, by name. */
  List<Student> studentsOf(UUID classId);

  /** Everyone who ever was in the class, by name. */
  List<Student> everyoneOf(UUID classId);
}
