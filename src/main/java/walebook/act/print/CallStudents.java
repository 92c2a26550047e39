package walebook.act.print;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import walebook.paper.Printable;
import walebook.record.Student;
import walebook.words.Words;

/**
 * What each student of a class is called on paper. Initials that two share, and names with letters
 * that no typeface has, are followed by the student's code, so that nobody is mistaken.
 */
final class CallStudents {
  private final List<Student> inOrder;
  private final Map<UUID, String> called = new HashMap<>();

  CallStudents(List<Student> students, Naming naming, Words words) {
    // Sorted by name the list would tell who stands behind a code.
    Comparator<Student> order =
        Comparator.comparing((Student each) -> naming == Naming.NAME ? "" : each.alias());
    inOrder = students.stream().sorted(order).toList();
    Map<String, Long> shared =
        students.stream()
            .collect(Collectors.groupingBy(each -> initials(each.name()), Collectors.counting()));
    for (Student each : inOrder) {
      called.put(each.id(), call(each, naming, shared, words));
    }
  }

  private static String call(
      Student student, Naming naming, Map<String, Long> shared, Words words) {
    if (naming == Naming.CODE) {
      return student.alias();
    }
    String initials = initials(student.name());
    String name = naming == Naming.NAME ? student.name() : initials;
    boolean twice = naming == Naming.INITIALS && shared.getOrDefault(initials, 0L) > 1;
    return twice || !Printable.shows(name)
        ? words.say("act.print.with-code", name, student.alias())
        : name;
  }

  /** The first letter of each part of a name, marks included. */
  static String initials(String name) {
    List<String> letters = new ArrayList<>();
    for (String part : name.strip().split("[\\s\\-]+", -1)) {
      BreakIterator clusters = BreakIterator.getCharacterInstance(Locale.ROOT);
      clusters.setText(part);
      int end = clusters.following(0);
      if (end != BreakIterator.DONE) {
        letters.add(part.substring(0, end).toUpperCase(Locale.ROOT) + ".");
      }
    }
    return String.join(" ", letters);
  }

  /** In the class's order; by code where names are not printed. */
  List<Student> inOrder() {
    return inOrder;
  }

  String of(UUID studentId) {
    return called.getOrDefault(studentId, "");
  }
}
