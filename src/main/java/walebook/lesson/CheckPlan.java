package walebook.lesson;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import tools.jackson.databind.JsonNode;
import walebook.problem.Problem;
import walebook.record.Tier;

/** Holds the parts of a plan against each other: slots, factors, settings, tiers. */
final class CheckPlan {
  private static final String CONTROL = "/plan/control";
  private static final String FACTORS = "/plan/factors";
  private static final String GRAINS = "/plan/grains";
  private static final String FIXED = "/plan/fixed";

  private final YamlDoc doc;
  private final List<Problem> problems = new ArrayList<>();
  private final Set<String> slots = new TreeSet<>();
  private final Set<String> factors = new HashSet<>();

  private CheckPlan(YamlDoc doc) {
    this.doc = doc;
  }

  static List<Problem> check(YamlDoc doc) {
    CheckPlan check = new CheckPlan(doc);
    check.slots();
    check.clothOf("/materials", "/cloth");
    check.cloth(CONTROL + "/cloth");
    if (doc.at("/plan/kind").asString("").equals(PiecesPlan.KIND)) {
      check.cloth(FIXED + "/cloth");
      check.factors();
      check.settings();
    }
    check.tiers();
    return check.problems;
  }

  private void slots() {
    for (int i = 0; i < doc.at("/plan/cloths").size(); i++) {
      String at = "/plan/cloths/" + i + "/slot";
      String slot = doc.at(at).asString("");
      if (!slot.isEmpty() && !slots.add(slot)) {
        problems.add(doc.atValue("pack.slot-twice", at, slot, ""));
      }
    }
  }

  private void clothOf(String list, String field) {
    for (int i = 0; i < doc.at(list).size(); i++) {
      cloth(list + "/" + i + field);
    }
  }

  private void cloth(String at) {
    JsonNode slot = doc.at(at);
    if (slot.isString() && !slots.isEmpty() && !slots.contains(slot.asString())) {
      problems.add(doc.atValue("pack.slot-unknown", at, slot.asString(), String.join(", ", slots)));
    }
  }

  private void factors() {
    for (int i = 0; i < doc.at(FACTORS).size(); i++) {
      String at = FACTORS + "/" + i;
      String key = doc.at(at + "/key").asString("");
      if (key.equals(SettingKey.CLOTH.key())) {
        clothOf(at + "/levels", "");
      }
      if (!key.isEmpty() && !factors.add(key)) {
        problems.add(doc.atValue("pack.factor-twice", at + "/key", key, ""));
      } else if (doc.at(FIXED).has(key)) {
        problems.add(doc.atValue("pack.factor-fixed", at + "/key", key, ""));
      }
    }
  }

  /** Every combination and the control piece must come out whole. */
  private void settings() {
    JsonNode fixed = doc.at(FIXED);
    JsonNode control = doc.at(CONTROL);
    if (!fixed.isObject() || !control.isObject()) {
      return;
    }
    for (SettingKey needed : Settings.NEEDED) {
      String key = needed.key();
      boolean inFixed = fixed.has(key);
      if (!inFixed && !factors.contains(key)) {
        problems.add(doc.missing(FIXED, key));
      } else if (!inFixed && !control.has(key)) {
        problems.add(doc.missing(CONTROL, key));
      }
    }
    boolean point = has(fixed, SettingKey.NEEDLE_POINT);
    boolean size = has(fixed, SettingKey.NEEDLE_NM);
    needle(FIXED, point, size);
    if (point != size) {
      return; // the control piece lacks the same
    }
    needle(
        CONTROL,
        fixed.has(SettingKey.NEEDLE_POINT.key()) || control.has(SettingKey.NEEDLE_POINT.key()),
        fixed.has(SettingKey.NEEDLE_NM.key()) || control.has(SettingKey.NEEDLE_NM.key()));
  }

  private boolean has(JsonNode fixed, SettingKey key) {
    return fixed.has(key.key()) || factors.contains(key.key());
  }

  private void needle(String holder, boolean point, boolean size) {
    if (point != size) {
      SettingKey lacking = point ? SettingKey.NEEDLE_NM : SettingKey.NEEDLE_POINT;
      problems.add(doc.missing(holder, lacking.key()));
    }
  }

  private void tiers() {
    long cells = cells();
    for (Tier tier : Tier.values()) {
      String at = "/plan/tiers/" + tier.key() + "/cells";
      JsonNode share = doc.at(at);
      if (cells >= 0 && share.isIntegralNumber() && share.asLong(0) > cells) {
        String found = CheckShape.shown(share);
        problems.add(doc.atValue("pack.tier-cells", at, found, String.valueOf(cells)));
      }
    }
  }

  /** True when the readings that everybody takes are among the cloths and grains of the plan. */
  private boolean controlIsACell() {
    JsonNode grain = doc.at(CONTROL + "/grain");
    if (!slots.contains(doc.at(CONTROL + "/cloth").asString(""))) {
      return false;
    }
    for (JsonNode each : doc.at(GRAINS)) {
      if (each.equals(grain)) {
        return true;
      }
    }
    return false;
  }

  /** How many combinations the plan has to share out; -1 while that can't be told. */
  private long cells() {
    if (doc.at("/plan/kind").asString("").equals(ReadingsPlan.KIND)) {
      long cells = (long) doc.at("/plan/cloths").size() * doc.at(GRAINS).size();
      return cells == 0 ? -1 : cells - (controlIsACell() ? 1 : 0);
    }
    if (doc.at(FACTORS).isEmpty()) {
      return -1;
    }
    long cells = 1;
    for (JsonNode factor : doc.at(FACTORS)) {
      cells *= Math.min(1000, factor.path("levels").size());
    }
    return cells == 0 ? -1 : cells;
  }
}
