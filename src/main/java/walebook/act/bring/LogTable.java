package walebook.act.bring;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.problem.Problem;
import walebook.record.Student;
import walebook.sheet.WithoutNames;
import walebook.words.Words;

/** What a row of readings, washes or notes names: cloths, lessons and people of the class. */
final class LogTable {
  private final Map<String, UUID> cloths = new LinkedHashMap<>();
  private final Map<String, String> clothNames = new LinkedHashMap<>();
  private final LessonsNamed lessons;
  private final Map<String, Student> students = new HashMap<>();

  private final WithoutNames without;
  private final UnaryOperator<String> cover;

  LogTable(Book book, UUID classId, Words words) {
    without = WithoutNames.of(book, words.say("sheet.tutor-word"));
    cover = without.cover();
    book.cloths()
        .all()
        .forEach(
            each -> {
              cloths.putIfAbsent(PieceTable.plain(each.name()), each.id());
              clothNames.putIfAbsent(PieceTable.plain(each.name()), each.name());
            });
    lessons = new LessonsNamed(book.lessons().of(classId));
    List<Student> everyone = book.enrolments().everyoneOf(classId);
    everyone.forEach(each -> students.put(PieceTable.plain(each.alias()), each));
    PieceTable.oneOfTheirName(everyone)
        .forEach(each -> students.putIfAbsent(PieceTable.plain(each.name()), each));
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

  LessonsNamed lessons() {
    return lessons;
  }

  /** Free text as it goes out with codes: what differs in this alone is the same. */
  String covered(String text) {
    return cover.apply(text);
  }

  /** What stands for somebody where codes were chosen; nothing for a stranger. */
  String standIn(String name) {
    return without.person(name);
  }

  /** Somebody of the class by code or by name. */
  @Nullable Student student(String called) {
    return students.get(PieceTable.plain(called));
  }
}
