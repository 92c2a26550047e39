package walebook.act.bring;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.problem.Problem;
import walebook.record.Student;

/** What a row of readings, washes or notes names: cloths, lessons and people of the class. */
final class LogTable {
  private final Map<String, UUID> cloths = new LinkedHashMap<>();
  private final Map<String, String> clothNames = new LinkedHashMap<>();
  private final Map<String, UUID> lessons = new HashMap<>();
  private final Map<String, Student> students = new HashMap<>();

  LogTable(Book book, UUID classId) {
    book.cloths()
        .all()
        .forEach(
            each -> {
              cloths.putIfAbsent(PieceTable.plain(each.name()), each.id());
              clothNames.putIfAbsent(PieceTable.plain(each.name()), each.name());
            });
    book.lessons()
        .of(classId)
        .forEach(each -> lessons.putIfAbsent(PieceTable.plain(each.title()), each.id()));
    for (Student each : book.enrolments().everyoneOf(classId)) {
      students.put(PieceTable.plain(each.alias()), each);
    }
    for (Student each : book.enrolments().everyoneOf(classId)) {
      students.putIfAbsent(PieceTable.plain(each.name()), each);
    }
  }

  /** The cloth that a field names, or null with the reason noted. */
  @Nullable UUID cloth(CellReader cells, String field) {
    String name = cells.text(field);
    UUID found = cloths.get(PieceTable.plain(name));
    if (found == null) {
      String known = String.join("; ", clothNames.values());
      cells
          .problems()
          .add(
              Problem.refuse(
                  name.isEmpty() ? "field.needed" : "choice.unknown",
                  cells.place(field),
                  name,
                  known));
    }
    return found;
  }

  @Nullable UUID lesson(String title) {
    return lessons.get(PieceTable.plain(title));
  }

  /** Somebody of the class by code or by name. */
  @Nullable Student student(String called) {
    return students.get(PieceTable.plain(called));
  }
}
