package walebook.lesson;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.Tier;

/**
 * A pack being written: field by field as typed, named as the check names them, such as {@code
 * plan.factors[0].levels[1]}. Tables have more rows than are used; empty ones don't count. What has
 * no field of its own stands as YAML in {@link #REST}; the steps come from the lesson's text.
 */
public final class PackDraft {
  /** Field of the rest of pack.yaml. */
  public static final String REST = "rest";

  /** Field of lesson.md. */
  public static final String LESSON = "lesson";

  /**
   * Field of the cloth that everybody measures first: a plan's kind can change while it is typed.
   */
  public static final String FIRST_CLOTH = "plan.first.cloth";

  /** Field of the grain along which everybody measures it. */
  public static final String FIRST_GRAIN = "plan.first.grain";

  private final Map<String, String> typed;
  private final List<PackPicture> pictures;

  /**
   * A draft.
   *
   * @param typed texts by field; one that is missing is empty
   * @param pictures that the lesson may show
   */
  public PackDraft(Map<String, String> typed, List<PackPicture> pictures) {
    this.typed = Map.copyOf(typed);
    this.pictures = List.copyOf(pictures);
  }

  /** A draft that writes the pack as it is. */
  public static PackDraft of(LessonPack pack) {
    return new PackDraft(DraftFields.of(pack), pack.files().pictures());
  }

  /**
   * What came of the check.
   *
   * @param pack the pack, or everything that keeps it from being one
   * @param told each problem and the field it is at
   * @param text the lesson's text as far as it can be shown
   */
  public record Checked(
      Answer<LessonPack> pack, List<Told> told, PackFiles files, LessonText text) {
    public Checked {
      told = List.copyOf(told);
    }
  }

  /**
   * A problem of a draft.
   *
   * @param field where it is mended; empty when that can't be told
   * @param line in the field's text, from 1; 0 for a field of one line
   */
  public record Told(Problem problem, String field, int line) {}

  public String text(String field) {
    return typed.getOrDefault(field, "");
  }

  public Map<String, String> typed() {
    return typed;
  }

  /** The headings that are steps, in the text's order. */
  public static List<String> headings(String lesson) {
    return new ReadText("")
        .read(lesson).text().steps().stream().map(LessonText.Step::heading).toList();
  }

  /** pack.yaml as it stands now. */
  public String yaml() {
    return composed().yaml();
  }

  /** Reads what is typed as a pack and says where each problem is mended. */
  public Checked check(ReadPack read) {
    DraftYaml.Composed composed = composed();
    SortedMap<String, byte[]> files = new TreeMap<>();
    pictures.forEach(each -> files.put(each.fileName(), each.content()));
    PackFiles kept = new PackFiles("0".repeat(64), composed.yaml(), text(LESSON), pictures);
    String name = text("name");
    Answer<LessonPack> pack = read.read(new PackBytes(name, kept.byName()));
    List<Told> told = new ArrayList<>();
    pack.problems().forEach(each -> told.add(told(each, composed)));
    LessonText text = new ReadText(name + "/" + ReadPack.TEXT).read(text(LESSON)).text();
    return new Checked(pack, told, kept, text);
  }

  /**
   * What the plan comes to so far, or null while that can't be told: when a factor has no levels or
   * a tier no number.
   *
   * @param students of the class on each tier
   */
  public @Nullable PlanCounts counts(Map<Tier, Integer> students) {
    Map<Tier, Integer> shares = new EnumMap<>(Tier.class);
    for (Tier tier : Tier.values()) {
      shares.put(tier, number("plan.tiers." + tier.key() + ".cells"));
    }
    boolean readings = text("plan.kind").equals(ReadingsPlan.KIND);
    int repeats = readings ? number("plan.repeats") : 1;
    Map<String, List<String>> levels = new LinkedHashMap<>();
    if (readings) {
      levels.put("cloths", many("plan.cloths", DraftYaml.CLOTHS, ".slot"));
      levels.put("grains", many("plan.grains", DraftYaml.LEVELS, ""));
    } else {
      for (int i = 0; i < DraftYaml.FACTORS; i++) {
        String factor = "plan.factors[" + i + "]";
        if (!text(factor + ".key").isBlank()) {
          levels.put(text(factor + ".key"), many(factor + ".levels", DraftYaml.LEVELS, ""));
        }
      }
    }
    boolean known =
        !levels.isEmpty()
            && levels.values().stream().noneMatch(List::isEmpty)
            && shares.values().stream().allMatch(each -> each > 0)
            && repeats > 0;
    if (!known) {
      return null;
    }
    int cells = levels.values().stream().mapToInt(List::size).reduce(1, (a, b) -> a * b);
    if (!readings) {
      return PlanCounts.ofPieces(levels, shares, students);
    }
    String cloth = text(FIRST_CLOTH).strip();
    String grain = text(FIRST_GRAIN).strip();
    boolean control = !cloth.isEmpty() && !grain.isEmpty();
    boolean isACell =
        levels.getOrDefault("cloths", List.of()).contains(cloth)
            && levels.getOrDefault("grains", List.of()).contains(grain);
    int left = isACell ? cells - 1 : cells;
    return left == 0 ? null : PlanCounts.ofReadings(left, control, repeats, shares, students);
  }

  private List<String> many(String list, int most, String field) {
    return IntStream.range(0, most)
        .mapToObj(i -> text(list + "[" + i + "]" + field).strip())
        .filter(each -> !each.isEmpty())
        .toList();
  }

  /** A whole number from 1 to 100, or 0 where there is none. */
  private int number(String field) {
    boolean whole = text(field).strip().matches("[1-9][0-9]?|100");
    return whole ? Integer.parseInt(text(field).strip()) : 0;
  }

  private DraftYaml.Composed composed() {
    return new DraftYaml(typed, headings(text(LESSON))).compose();
  }

  private Told told(Problem problem, DraftYaml.Composed composed) {
    if (!(problem.place() instanceof Place.Spot spot)) {
      return new Told(problem, lessonOr(problem.place(), ""), 0);
    }
    if (!spot.file().endsWith(ReadPack.YAML)) {
      return new Told(problem, lessonOr(spot, ""), spot.line());
    }
    if (spot.line() > composed.headLines()) {
      return new Told(problem, REST, spot.line() - composed.headLines());
    }
    String field = composed.field(spot.field());
    return new Told(problem, field == null ? missing(spot.field()) : field, 0);
  }

  /** The rest holds what has no field, so what is missing there is to be written there. */
  private static String missing(String path) {
    return DraftYaml.isRest(path) ? REST : "";
  }

  private static String lessonOr(Place place, String otherwise) {
    @Nullable String file = null;
    if (place instanceof Place.Spot spot) {
      file = spot.file();
    } else if (place instanceof Place.Path path) {
      file = path.path();
    }
    return file != null && file.endsWith(ReadPack.TEXT) ? LESSON : otherwise;
  }

  /** The draft with one more field typed. */
  public PackDraft with(String field, String text) {
    Map<String, String> more = new LinkedHashMap<>(typed);
    more.put(field, text);
    return new PackDraft(more, pictures);
  }
}
