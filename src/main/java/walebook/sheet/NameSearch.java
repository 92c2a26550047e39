package walebook.sheet;

import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import walebook.words.Words;

/**
 * Looks through the free text of what would go out for names of people: full names, and parts of
 * names such as a first name alone, which no cover can tell from a common word.
 */
final class NameSearch {
  /** Shorter parts are initials and particles. */
  private static final int SHORTEST = 3;

  private final Map<String, Known> known;
  private final Pattern any;
  private final Map<String, Map<Known, Integer>> seen = new HashMap<>();

  private record Known(String name, boolean whole) implements Comparable<Known> {
    @Override
    public int compareTo(Known other) {
      int byWhole = Boolean.compare(other.whole, whole);
      return byWhole != 0 ? byWhole : name.compareTo(other.name);
    }
  }

  private NameSearch(Map<String, Known> known) {
    this.known = known;
    this.any = NameCover.anyOf(known.keySet());
  }

  /** Every name in what the parts hold, full names first; empty when there is none. */
  static List<NameInText> in(TermFacts facts, List<SheetPart<?>> parts, Words words) {
    Map<String, Known> known = known(facts.everyName());
    if (known.isEmpty()) {
      return List.of();
    }
    NameSearch search = new NameSearch(known);
    Map<Known, Map<String, NameInText.Place>> found = new TreeMap<>();
    parts.forEach(each -> search.part(each, words, found));
    return found.entrySet().stream()
        .map(
            each ->
                new NameInText(
                    each.getKey().name(),
                    each.getKey().whole(),
                    List.copyOf(each.getValue().values())))
        .toList();
  }

  private static Map<String, Known> known(Collection<String> names) {
    Map<String, Known> known = new HashMap<>();
    names.forEach(each -> known.put(NameCover.plain(each), new Known(each.strip(), true)));
    for (String name : names) {
      for (String part : name.strip().split("(?U)[\\s-]+")) {
        if (part.codePointCount(0, part.length()) >= SHORTEST) {
          known.putIfAbsent(NameCover.plain(part), new Known(part, false));
        }
      }
    }
    return known;
  }

  private <T> void part(
      SheetPart<T> part, Words words, Map<Known, Map<String, NameInText.Place>> found) {
    String sheet = words.say(part.name());
    List<Column<T>> typed = part.columns().stream().filter(NameSearch::mayHoldNames).toList();
    Map<Known, Integer> here = new HashMap<>();
    part.columns().forEach(each -> text(each.title(words), here));
    if (!typed.isEmpty()) {
      for (T row : part.rows()) {
        for (Column<T> each : typed) {
          if (each.value().apply(row) instanceof Value.Text text) {
            text(text.text(), here);
          }
        }
      }
    }
    here.forEach(
        (name, cells) ->
            found
                .computeIfAbsent(name, first -> new LinkedHashMap<>())
                .put(sheet, new NameInText.Place(sheet, cells, TermPreview.formats(part))));
  }

  /** Columns of people hold what was chosen for people; worked-out ones are in our own words. */
  private static boolean mayHoldNames(Column<?> column) {
    return switch (column.origin()) {
      case TYPED, ROOM, REMARK, ONE_CHANGE, KIT, GARMENT, COVERAGE, SETTING -> column.isWords();
      default -> false;
    };
  }

  private void text(String text, Map<Known, Integer> here) {
    seen.computeIfAbsent(text, this::names)
        .forEach((name, once) -> here.merge(name, once, Integer::sum));
  }

  /** Each name once for a cell. */
  private Map<Known, Integer> names(String text) {
    Map<Known, Integer> hits = new HashMap<>();
    Matcher found = any.matcher(NameCover.composed(text));
    while (found.find()) {
      Known name = known.get(NameCover.plain(found.group()));
      if (name != null) {
        hits.put(name, 1);
      }
    }
    return hits;
  }
}
