package walebook.sheet;

import java.util.LinkedHashSet;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.record.ClothReading;

/**
 * What of a class goes into its record. An empty set means all.
 *
 * @param names true for students' and the tutor's names, false for codes alone
 * @param lessonIds with some chosen, pieces without a lesson are left out
 * @param studentIds whose pieces, progress and marks
 * @param columns keys of the columns of the table of pieces
 * @param studentSheets true for a sheet of its own for each student, with small photos
 */
public record TermChoice(
    boolean names,
    Set<UUID> lessonIds,
    Set<UUID> studentIds,
    Set<String> columns,
    boolean studentSheets) {
  /** The column by which a row is found again. */
  public static final String CODE_COLUMN = "code";

  /** Everything, with codes. */
  public static final TermChoice CODES = new TermChoice(false, Set.of(), Set.of(), Set.of(), false);

  public TermChoice {
    lessonIds = Set.copyOf(lessonIds);
    studentIds = Set.copyOf(studentIds);
    columns = Set.copyOf(columns);
  }

  public TermChoice withNames(boolean wanted) {
    return new TermChoice(wanted, lessonIds, studentIds, columns, studentSheets);
  }

  public TermChoice ofLessons(Set<UUID> ids) {
    return new TermChoice(names, ids, studentIds, columns, studentSheets);
  }

  public TermChoice ofStudents(Set<UUID> ids) {
    return new TermChoice(names, lessonIds, ids, columns, studentSheets);
  }

  /** The code of a piece always goes out: a row without it could not be found again. */
  public TermChoice inColumns(Set<String> keys) {
    Set<String> kept = new LinkedHashSet<>(keys);
    if (!kept.isEmpty()) {
      kept.add(CODE_COLUMN);
    }
    return new TermChoice(names, lessonIds, studentIds, kept, studentSheets);
  }

  public TermChoice withStudentSheets(boolean wanted) {
    return new TermChoice(names, lessonIds, studentIds, columns, wanted);
  }

  boolean hasStudent(UUID id) {
    return studentIds.isEmpty() || studentIds.contains(id);
  }

  boolean hasLesson(@Nullable UUID id) {
    return lessonIds.isEmpty() || (id != null && lessonIds.contains(id));
  }

  /** Readings of nobody known go out with everybody's. */
  boolean hasReading(ClothReading reading) {
    UUID by = reading.measuredBy();
    return hasLesson(reading.lessonId()) && (by == null ? studentIds.isEmpty() : hasStudent(by));
  }

  boolean hasColumn(String key) {
    return columns.isEmpty() || columns.contains(key);
  }
}
