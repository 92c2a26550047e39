package walebook.compare;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import walebook.book.Book;
import walebook.record.Machine;
import walebook.record.ResultLine;
import walebook.record.Student;

/** The shown names of levels that are keys of rows. */
public final class Names {
  private final Map<String, String> shown;

  /** Asked for again and again: spelling a key out takes longer than finding it. */
  private final Map<Object, String> asked = new ConcurrentHashMap<>();

  private Names(Map<String, String> shown) {
    this.shown = Map.copyOf(shown);
  }

  /**
   * Reads the names from a book.
   *
   * @param aliases true to show students' aliases in the place of their names
   */
  public static Names of(Book book, boolean aliases) {
    Map<String, String> shown = room(book);
    book.students().all().forEach(each -> put(shown, each, aliases));
    return new Names(shown);
  }

  /** The same for those whose pieces are looked at, where a book holds many more. */
  public static Names of(Book book, boolean aliases, List<ResultLine> lines) {
    Map<String, String> shown = room(book);
    Set<UUID> classes = new HashSet<>();
    Set<UUID> students = new HashSet<>();
    for (ResultLine line : lines) {
      classes.add(line.classId());
      students.add(line.studentId());
    }
    classes.forEach(
        id -> book.enrolments().everyoneOf(id).forEach(each -> put(shown, each, aliases)));
    for (UUID id : students) {
      Student missing = shown.containsKey(id.toString()) ? null : book.students().find(id);
      if (missing != null) {
        put(shown, missing, aliases);
      }
    }
    return new Names(shown);
  }

  /** Names by key, from wherever they are known. */
  public static Names given(Map<String, String> shown) {
    return new Names(shown);
  }

  /** Names from several books in one; keys are never the same in two. */
  public static Names together(List<Names> all) {
    Map<String, String> shown = new HashMap<>();
    all.forEach(each -> shown.putAll(each.shown));
    return new Names(shown);
  }

  private static Map<String, String> room(Book book) {
    Map<String, String> shown = new HashMap<>();
    book.cloths().all().forEach(each -> shown.put(each.id().toString(), each.name()));
    for (Machine each : book.machines().all()) {
      shown.put(each.id().toString(), each.label());
    }
    return shown;
  }

  private static void put(Map<String, String> shown, Student student, boolean alias) {
    shown.put(student.id().toString(), alias ? student.alias() : student.name());
  }

  /** A level as people read it. */
  public String show(Factor factor, String level) {
    return factor.isOfRows() ? shown.getOrDefault(level, "") : level;
  }

  /** The name of any row's key; empty when the book has none. */
  public String of(Object id) {
    String known = asked.get(id);
    if (known == null) {
      known = shown.getOrDefault(id.toString(), "");
      asked.put(id, known);
    }
    return known;
  }
}
