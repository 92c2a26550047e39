package walebook.act.bring;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.Lesson;
import walebook.sheet.LessonTitles;

/** The lessons of a class by what a cell calls them: title, or title and day where two have one. */
final class LessonsNamed {
  private final Map<String, UUID> byName = new HashMap<>();
  private final Map<String, List<Lesson>> byTitle = new HashMap<>();
  private final Map<UUID, String> names;

  LessonsNamed(List<Lesson> ofClass) {
    names = LessonTitles.of(ofClass);
    for (Lesson each : ofClass) {
      byTitle.computeIfAbsent(PieceTable.plain(each.title()), title -> new ArrayList<>()).add(each);
    }
    byTitle.forEach(
        (title, alike) -> {
          if (alike.size() == 1) {
            byName.put(title, alike.get(0).id());
          }
        });
    names.forEach((lesson, name) -> byName.put(PieceTable.plain(name), lesson));
  }

  /**
   * The lesson that a cell names; null where none, or more than one, is meant.
   *
   * @param day of the row, such as 2026-10-05, which tells lessons of one title apart
   */
  @Nullable UUID find(String called, String day) {
    UUID named = byName.get(PieceTable.plain(called));
    if (named != null) {
      return named;
    }
    List<Lesson> thatDay =
        alike(called).stream().filter(each -> each.taughtOn().toString().equals(day)).toList();
    return thatDay.size() == 1 ? thatDay.get(0).id() : null;
  }

  /** Whether a piece's plan has told already which of several lessons is meant. */
  boolean isOneOf(String called, @Nullable UUID lesson) {
    return alike(called).stream().anyMatch(each -> each.id().equals(lesson));
  }

  /**
   * Why no lesson was found.
   *
   * @param none what to say where the class has no lesson of that title
   */
  Problem notFound(String called, Place place, Problem none) {
    List<Lesson> alike = alike(called);
    if (alike.isEmpty()) {
      return none;
    }
    TreeSet<String> wanted = new TreeSet<>();
    alike.forEach(each -> wanted.add(names.getOrDefault(each.id(), each.title())));
    return Problem.refuse("bring.lesson-twice", place, called, String.join("; ", wanted));
  }

  private List<Lesson> alike(String called) {
    return byTitle.getOrDefault(PieceTable.plain(called), List.of());
  }
}
