package walebook.sheet;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import walebook.record.Lesson;

/**
 * What the lessons of a class are called where several are named: by their titles, with the day
 * behind it where two have one title, as when a lesson was taught again.
 */
public final class LessonTitles {
  private LessonTitles() {}

  /** A name for each lesson, no two alike. */
  public static Map<UUID, String> of(List<Lesson> ofClass) {
    Map<UUID, String> names = new LinkedHashMap<>();
    Map<String, Long> titles = counted(ofClass, Lesson::title);
    Map<String, Long> dated = counted(ofClass, LessonTitles::dated);
    Map<String, Integer> nth = new HashMap<>();
    for (Lesson each : ofClass) {
      String day = dated(each);
      String name = titles.getOrDefault(plain(each.title()), 0L) == 1 ? each.title() : day;
      boolean sameDay = !name.equals(each.title()) && dated.getOrDefault(plain(day), 0L) > 1;
      int place = nth.merge(plain(day), 1, Integer::sum);
      names.put(
          each.id(), sameDay ? each.title() + " (" + each.taughtOn() + ", " + place + ")" : name);
    }
    return Map.copyOf(names);
  }

  private static String dated(Lesson lesson) {
    return lesson.title() + " (" + lesson.taughtOn() + ")";
  }

  private static Map<String, Long> counted(List<Lesson> all, Function<Lesson, String> name) {
    return all.stream()
        .collect(Collectors.groupingBy(each -> plain(name.apply(each)), Collectors.counting()));
  }

  /** As names are compared: whatever the case, the spaces and the form of the letters. */
  public static String plain(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFC)
        .strip()
        .replaceAll("(?U)\\s+", " ")
        .toLowerCase(Locale.ROOT);
  }
}
