package walebook.act.lesson;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import walebook.act.decide.AllCalculations;
import walebook.lesson.LessonPack;
import walebook.lesson.LogField;
import walebook.lesson.PiecesPlan;
import walebook.tables.SharedTables;
import walebook.working.Calculation;

/**
 * The calculations a lesson's numbers go into, those that fit first: the ones its name speaks of,
 * then the ones that its log feeds, then all others.
 */
public final class RoomCalculations {
  private RoomCalculations() {}

  /** All calculations in the order in which a tutor would want them in this lesson. */
  public static List<Calculation> of(LessonPack pack, SharedTables tables) {
    Map<String, Calculation> left = new LinkedHashMap<>();
    AllCalculations.list(tables).forEach(each -> left.put(each.name(), each));
    List<String> order = new ArrayList<>(named(pack, left.keySet()));
    order.addAll(logged(pack));
    List<Calculation> all = new ArrayList<>();
    for (String name : order) {
      Calculation found = left.remove(name);
      if (found != null) {
        all.add(found);
      }
    }
    all.addAll(left.values());
    return List.copyOf(all);
  }

  /** Calculations of whose name every word begins a word of the pack's name, longest first. */
  private static List<String> named(LessonPack pack, Set<String> names) {
    List<String> topic = Arrays.asList(pack.about().name().toLowerCase(Locale.ROOT).split("-", -1));
    return names.stream()
        .filter(
            name ->
                Arrays.stream(name.split("-", -1))
                    .allMatch(part -> topic.stream().anyMatch(word -> word.startsWith(part))))
        .sorted(Comparator.comparingInt((String name) -> name.split("-", -1).length).reversed())
        .toList();
  }

  private static List<String> logged(LessonPack pack) {
    List<LogField> log = pack.log();
    List<String> names = new ArrayList<>();
    if (pack.plan() instanceof PiecesPlan) {
      if (log.contains(LogField.PULL) || log.contains(LogField.STRETCHED)) {
        names.addAll(List.of("seam-stretch", "seam-share"));
      }
      if (log.contains(LogField.EDGE_SEWN) || log.contains(LogField.EDGE_PRESSED)) {
        names.add("edge-change");
      }
      if (log.contains(LogField.WIDTH)) {
        names.add("zigzag");
      }
    }
    names.add("stretch");
    if (log.contains(LogField.RELEASED)) {
      names.addAll(List.of("growth", "recovery"));
    }
    names.add("repeats");
    return names;
  }
}
