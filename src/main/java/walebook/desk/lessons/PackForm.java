package walebook.desk.lessons;

import java.util.ArrayList;
import java.util.List;
import walebook.lesson.PackDraft;
import walebook.lesson.SettingKey;
import walebook.record.Tier;

/** The fields of the form in which a pack is written, named as the check names them. */
final class PackForm {
  static final int STEPS = 40;
  static final int FACTORS = 4;
  static final int LEVELS = 6;
  static final int CLOTHS = 8;
  static final int GRAINS = 3;
  static final int CHECKS = 12;
  static final int CAUTIONS = 20;
  static final int MATERIALS = 60;

  private PackForm() {}

  static String minutes(int step) {
    return "steps[" + step + "].minutes";
  }

  static String at(String list, int row, String field) {
    return list + "[" + row + "]." + field;
  }

  static String[] fields() {
    List<String> all =
        new ArrayList<>(
            List.of(
                "name",
                "version",
                "title",
                "summary",
                "plan.kind",
                "plan.question",
                "plan.repeats",
                PackDraft.FIRST_CLOTH,
                PackDraft.FIRST_GRAIN,
                PackDraft.LESSON,
                PackDraft.REST));
    for (int i = 0; i < STEPS; i++) {
      all.add(minutes(i));
    }
    rows(
        all,
        "materials",
        MATERIALS,
        "what",
        "count",
        "cloth",
        "along_mm",
        "across_mm",
        "grain",
        "thread_m");
    rows(all, "cautions", CAUTIONS, "key", "says");
    rows(all, "plan.cloths", CLOTHS, "slot", "says");
    rows(all, "success", CHECKS, "check", "value", "says");
    rows(all, "plan.factors", FACTORS, "key", "says");
    for (int i = 0; i < FACTORS; i++) {
      for (int j = 0; j < LEVELS; j++) {
        all.add(level(i, j));
      }
    }
    for (int i = 0; i < GRAINS; i++) {
      all.add("plan.grains[" + i + "]");
    }
    for (SettingKey key : SettingKey.values()) {
      all.add("plan.fixed." + key.key());
      all.add("plan.control." + key.key());
    }
    for (Tier tier : Tier.values()) {
      all.add("plan.tiers." + tier.key() + ".cells");
      all.add("plan.tiers." + tier.key() + ".says");
    }
    return all.toArray(String[]::new);
  }

  static String level(int factor, int level) {
    return "plan.factors[" + factor + "].levels[" + level + "]";
  }

  private static void rows(List<String> all, String list, int most, String... fields) {
    for (int i = 0; i < most; i++) {
      for (String field : fields) {
        all.add(at(list, i, field));
      }
    }
  }
}
