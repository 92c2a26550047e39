package walebook.sheet;

import java.util.HashMap;
import java.util.Map;
import java.util.function.UnaryOperator;
import walebook.book.Book;
import walebook.record.Student;
import walebook.record.Tutor;

/** What stands for the people of a book where codes were chosen. */
public final class WithoutNames {
  /** By plain name or code. */
  private final Map<String, String> instead = new HashMap<>();

  private final Map<String, String> byName = new HashMap<>();

  private WithoutNames() {}

  /**
   * Those of a book.
   *
   * @param tutorWord what stands for a tutor's name
   */
  public static WithoutNames of(Book book, String tutorWord) {
    WithoutNames made = new WithoutNames();
    for (Tutor each : book.tutors().all()) {
      made.put(each.name(), tutorWord);
    }
    for (Student each : book.students().all()) {
      made.put(each.name(), each.alias());
    }
    for (Student each : book.students().all()) {
      made.instead.put(NameCover.plain(each.alias()), each.alias());
    }
    return made;
  }

  private void put(String name, String other) {
    byName.merge(name, other, (one, two) -> one.equals(two) ? one : one + "/" + two);
    // Whom of two with one name it was nobody knows, and no code is better than the wrong one.
    instead.merge(NameCover.plain(name), other, (one, two) -> one.equals(two) ? one : "");
  }

  /** The code of a student, the word for a tutor, and nothing for anybody else. */
  public String person(String name) {
    return instead.getOrDefault(NameCover.plain(name), "");
  }

  /** Covers full names in free text. */
  public UnaryOperator<String> cover() {
    return NameCover.of(byName);
  }
}
