package walebook.lesson;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.api.Dump;
import org.snakeyaml.engine.v2.api.DumpSettings;
import org.snakeyaml.engine.v2.common.FlowStyle;
import walebook.record.Tier;

/**
 * Writes pack.yaml from the fields of a draft, and remembers which field each of its values came
 * from. Numbers go in as numbers where they are some; all else goes in as typed, for the check to
 * judge. The rest is put behind as it stands, so that its lines can be told.
 */
final class DraftYaml {
  /** What a pack can hold of each, as the schema has it. */
  static final int FACTORS = 4;

  static final int LEVELS = 6;
  static final int CLOTHS = 8;
  static final int CHECKS = 12;
  static final int CAUTIONS = 20;
  static final int MATERIALS = 60;

  private static final Pattern NUMBER = Pattern.compile("[-−]?[0-9]{1,12}(?:[.,][0-9]{1,12})?");
  private static final Set<String> OF_REST =
      Set.of("aims", "for_the_room", "access", "log", "measure", "trouble", "further", "figures");
  private static final Set<SettingKey> WORDS =
      Set.of(
          SettingKey.CLOTH,
          SettingKey.GRAIN,
          SettingKey.METHOD,
          SettingKey.MACHINE,
          SettingKey.STITCH_TYPE,
          SettingKey.NEEDLE_POINT,
          SettingKey.STABILISER,
          SettingKey.HEM_METHOD);

  private final Map<String, String> typed;
  private final List<String> headings;
  private final Map<String, String> cameFrom = new LinkedHashMap<>();

  DraftYaml(Map<String, String> typed, List<String> headings) {
    this.typed = typed;
    this.headings = List.copyOf(headings);
  }

  /**
   * The file.
   *
   * @param headLines lines before the rest
   * @param cameFrom fields of the draft by the path in the file
   */
  record Composed(String yaml, int headLines, Map<String, String> cameFrom) {
    /** The field that a path of the file is mended in; the first inside it, or null. */
    @Nullable String field(String path) {
      String exact = cameFrom.get(path);
      return exact != null
          ? exact
          : cameFrom.entrySet().stream()
              .filter(each -> each.getKey().startsWith(path) && !path.isEmpty())
              .map(Map.Entry::getValue)
              .findFirst()
              .orElse(null);
    }
  }

  /** True for a part that has no fields of its own. */
  static boolean isRest(String path) {
    return OF_REST.contains(path.replaceFirst("[.\\[].*", ""));
  }

  Composed compose() {
    Map<String, Object> pack = new LinkedHashMap<>();
    pack.put("format", 1);
    words(pack, "name", "name");
    words(pack, "version", "version");
    words(pack, "title", "title");
    words(pack, "summary", "summary");
    steps(pack);
    pack.put("materials", rows("materials", MATERIALS, this::material));
    pack.put("cautions", rows("cautions", CAUTIONS, (row, at) -> fields(row, at, "key", "says")));
    pack.put("plan", plan());
    pack.put("success", rows("success", CHECKS, this::success));
    String head = dump(pack);
    String rest = text(PackDraft.REST);
    cameFrom.putIfAbsent("success", "success[0].check");
    return new Composed(head + rest, (int) head.lines().count(), cameFrom);
  }

  static String dump(Map<String, Object> part) {
    return new Dump(
            DumpSettings.builder()
                .setDefaultFlowStyle(FlowStyle.BLOCK)
                .setIndicatorIndent(2)
                .setIndentWithIndicator(true)
                .setSplitLines(false)
                .build())
        .dumpToString(part);
  }

  private void steps(Map<String, Object> pack) {
    List<Map<String, Object>> steps = new ArrayList<>();
    long sum = 0;
    for (int i = 0; i < headings.size(); i++) {
      Map<String, Object> step = new LinkedHashMap<>();
      step.put("heading", headings.get(i));
      String field = DraftFields.at("steps", i, "minutes");
      number(step, "minutes", field, field);
      cameFrom.put(DraftFields.at("steps", i, "heading"), PackDraft.LESSON);
      sum += step.get("minutes") instanceof Long minutes ? minutes : 0;
      steps.add(step);
    }
    cameFrom.put("minutes", DraftFields.at("steps", 0, "minutes"));
    cameFrom.put("steps", PackDraft.LESSON);
    pack.put("minutes", sum);
    pack.put("steps", steps);
  }

  private Map<String, Object> plan() {
    Map<String, Object> plan = new LinkedHashMap<>();
    words(plan, "kind", "plan.kind");
    words(plan, "question", "plan.question");
    plan.put("cloths", rows("plan.cloths", CLOTHS, (row, at) -> fields(row, at, "slot", "says")));
    if (text("plan.kind").equals(ReadingsPlan.KIND)) {
      plan.put("grains", values("plan.grains", false));
      Map<String, Object> control = new LinkedHashMap<>();
      words(control, "cloth", PackDraft.FIRST_CLOTH, "plan.control.cloth");
      words(control, "grain", PackDraft.FIRST_GRAIN, "plan.control.grain");
      if (!control.isEmpty()) {
        plan.put("control", control);
      }
      number(plan, "repeats", "plan.repeats", "plan.repeats");
    } else {
      plan.put("fixed", settings("plan.fixed"));
      plan.put("control", settings("plan.control"));
      plan.put("factors", rows("plan.factors", FACTORS, this::factor));
    }
    Map<String, Object> tiers = new LinkedHashMap<>();
    for (Tier tier : Tier.values()) {
      String at = "plan.tiers." + tier.key();
      Map<String, Object> share = new LinkedHashMap<>();
      number(share, "cells", at + ".cells", at + ".cells");
      words(share, "says", at + ".says");
      tiers.put(tier.key(), share);
    }
    plan.put("tiers", tiers);
    return plan;
  }

  private Map<String, Object> settings(String at) {
    Map<String, Object> settings = new LinkedHashMap<>();
    for (SettingKey key : SettingKey.values()) {
      String field = at + "." + key.key();
      if (WORDS.contains(key)) {
        words(settings, key.key(), field);
      } else {
        number(settings, key.key(), field, field);
      }
    }
    return settings;
  }

  private Map<String, Object> factor(String from, String at) {
    Map<String, Object> factor = fields(from, at, "key", "says");
    boolean inNumbers =
        WORDS.stream().noneMatch(each -> each.key().equals(text(from + ".key").strip()));
    List<Object> levels = new ArrayList<>();
    for (int i = 0; i < LEVELS; i++) {
      String field = from + ".levels[" + i + "]";
      String level = text(field).strip();
      if (!level.isEmpty()) {
        cameFrom.put(at + ".levels[" + levels.size() + "]", field);
        levels.add(inNumbers ? value(level) : level);
      }
    }
    cameFrom.putIfAbsent(at + ".levels", from + ".levels[0]");
    factor.put("levels", levels);
    return factor;
  }

  private Map<String, Object> material(String from, String at) {
    Map<String, Object> material = fields(from, at, "what");
    number(material, "count", from + ".count", at + ".count");
    fields(from, at, "cloth").forEach(material::put);
    number(material, "along_mm", from + ".along_mm", at + ".along_mm");
    number(material, "across_mm", from + ".across_mm", at + ".across_mm");
    fields(from, at, "grain").forEach(material::put);
    number(material, "thread_m", from + ".thread_m", at + ".thread_m");
    return material;
  }

  private Map<String, Object> success(String from, String at) {
    Map<String, Object> success = fields(from, at, "check");
    number(success, "value", from + ".value", at + ".value");
    fields(from, at, "says").forEach(success::put);
    return success;
  }

  /** Makes a row of the file from one of the form; they differ where rows above are empty. */
  private interface Row {
    Map<String, Object> of(String from, String at);
  }

  private List<Map<String, Object>> rows(String list, int most, Row row) {
    List<Map<String, Object>> rows = new ArrayList<>();
    for (int i = 0; i < most; i++) {
      String from = list + "[" + i + "]";
      boolean used =
          typed.entrySet().stream()
              .anyMatch(each -> each.getKey().startsWith(from) && !each.getValue().isBlank());
      if (used) {
        rows.add(row.of(from, list + "[" + rows.size() + "]"));
      }
    }
    cameFrom.putIfAbsent(list, list + "[0]." + firstField(list));
    return rows;
  }

  private static String firstField(String list) {
    return switch (list) {
      case "materials" -> "what";
      case "plan.cloths" -> "slot";
      case "success" -> "check";
      default -> "key";
    };
  }

  private List<Object> values(String list, boolean numbers) {
    List<Object> values = new ArrayList<>();
    for (int i = 0; i < LEVELS; i++) {
      String field = list + "[" + i + "]";
      String text = text(field).strip();
      if (!text.isEmpty()) {
        cameFrom.put(list + "[" + values.size() + "]", field);
        values.add(numbers ? value(text) : text);
      }
    }
    cameFrom.putIfAbsent(list, list + "[0]");
    return values;
  }

  private Map<String, Object> fields(String from, String at, String... names) {
    Map<String, Object> row = new LinkedHashMap<>();
    for (String name : names) {
      cameFrom.put(at + "." + name, from + "." + name);
      String text = text(from + "." + name).strip();
      if (!text.isEmpty()) {
        row.put(name, text);
      }
    }
    return row;
  }

  private void words(Map<String, Object> into, String name, String field) {
    words(into, name, field, field);
  }

  private void words(Map<String, Object> into, String name, String field, String at) {
    cameFrom.put(at, field);
    String text = text(field).strip();
    if (!text.isEmpty()) {
      into.put(name, text);
    }
  }

  private void number(Map<String, Object> into, String name, String field, String at) {
    cameFrom.put(at, field);
    String text = text(field).strip();
    if (!text.isEmpty()) {
      into.put(name, value(text));
    }
  }

  /** A number where it is one, with a comma or a point; else the words. */
  static Object value(String text) {
    Matcher number = NUMBER.matcher(text.strip());
    if (!number.matches()) {
      return text;
    }
    BigDecimal value =
        new BigDecimal(text.strip().replace(',', '.').replace('−', '-')).stripTrailingZeros();
    return value.scale() <= 0 ? (Object) value.longValueExact() : value.doubleValue();
  }

  private String text(String field) {
    return typed.getOrDefault(field, "");
  }
}
