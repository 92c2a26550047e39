package walebook.lesson;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import walebook.record.Grain;
import walebook.record.Tier;

/** A pack taken apart into the fields of a draft. */
final class DraftFields {
  private final Map<String, String> fields = new LinkedHashMap<>();

  private DraftFields() {}

  static Map<String, String> of(LessonPack pack) {
    DraftFields all = new DraftFields();
    LessonPack.About about = pack.about();
    all.put("name", about.name());
    all.put("version", about.version());
    all.put("title", about.title());
    all.put("summary", about.summary());
    all.steps(pack.teaching().steps());
    all.materials(pack.needs().perStudent());
    for (int i = 0; i < pack.teaching().cautions().size(); i++) {
      LessonPack.PackCaution caution = pack.teaching().cautions().get(i);
      all.put(at("cautions", i, "key"), caution.key());
      all.put(at("cautions", i, "says"), caution.says());
    }
    all.plan(pack.plan());
    for (int i = 0; i < pack.success().size(); i++) {
      Success success = pack.success().get(i);
      all.put(at("success", i, "check"), success.kind().key());
      all.put(at("success", i, "value"), number(success.value()));
      all.put(at("success", i, "says"), success.says());
    }
    all.put(PackDraft.REST, DraftYaml.dump(rest(pack)));
    all.put(PackDraft.LESSON, pack.files().lessonMd());
    return all.fields;
  }

  static String at(String list, int row, String field) {
    return list + "[" + row + "]." + field;
  }

  private void steps(List<LessonPack.StepTime> steps) {
    for (int i = 0; i < steps.size(); i++) {
      put(at("steps", i, "minutes"), String.valueOf(steps.get(i).minutes()));
    }
  }

  private void materials(List<Material> materials) {
    for (int i = 0; i < materials.size(); i++) {
      Material each = materials.get(i);
      Grain grain = each.grain();
      put(at("materials", i, "what"), each.what());
      put(at("materials", i, "count"), number(each.count()));
      put(at("materials", i, "cloth"), each.cloth());
      put(at("materials", i, "along_mm"), number(each.alongMm()));
      put(at("materials", i, "across_mm"), number(each.acrossMm()));
      put(at("materials", i, "grain"), grain == null ? null : grain.key());
      put(at("materials", i, "thread_m"), number(each.threadM()));
    }
  }

  private void plan(Plan plan) {
    put("plan.kind", plan.kind());
    put("plan.question", plan.question());
    for (int i = 0; i < plan.cloths().size(); i++) {
      put(at("plan.cloths", i, "slot"), plan.cloths().get(i).slot());
      put(at("plan.cloths", i, "says"), plan.cloths().get(i).says());
    }
    if (plan instanceof PiecesPlan pieces) {
      pieces.fixed().values().forEach((key, value) -> put("plan.fixed." + key.key(), value));
      pieces.control().values().forEach((key, value) -> put("plan.control." + key.key(), value));
      for (int i = 0; i < pieces.factors().size(); i++) {
        PiecesPlan.Factor factor = pieces.factors().get(i);
        put(at("plan.factors", i, "key"), factor.key().key());
        put(at("plan.factors", i, "says"), factor.says());
        for (int j = 0; j < factor.levels().size(); j++) {
          put(at("plan.factors", i, "levels") + "[" + j + "]", factor.levels().get(j));
        }
      }
    } else if (plan instanceof ReadingsPlan readings) {
      for (int i = 0; i < readings.grains().size(); i++) {
        put("plan.grains[" + i + "]", readings.grains().get(i).key());
      }
      put("plan.repeats", String.valueOf(readings.repeats()));
      ReadingsPlan.Cell control = readings.control();
      if (control != null) {
        put(PackDraft.FIRST_CLOTH, control.slot());
        put(PackDraft.FIRST_GRAIN, control.grain().key());
      }
    }
    for (Tier tier : Tier.values()) {
      Tiers.Share share = plan.tiers().of(tier);
      put("plan.tiers." + tier.key() + ".cells", String.valueOf(share.cells()));
      put("plan.tiers." + tier.key() + ".says", share.says());
    }
  }

  private static Map<String, Object> rest(LessonPack pack) {
    Map<String, Object> rest = new LinkedHashMap<>();
    LessonPack.Teaching teaching = pack.teaching();
    rest.put("aims", teaching.aims());
    list(rest, "for_the_room", pack.needs().forTheRoom());
    list(rest, "access", teaching.access());
    rest.put("log", pack.log().stream().map(LogField::key).toList());
    rest.put("measure", measure(pack.measure()));
    List<Map<String, Object>> trouble = new ArrayList<>();
    for (LessonPack.Trouble each : teaching.trouble()) {
      Map<String, Object> one = new LinkedHashMap<>();
      one.put("fault", each.fault());
      list(one, "steps", each.steps());
      one.put("says", each.says());
      trouble.add(one);
    }
    rest.put("trouble", trouble);
    if (!teaching.further().isEmpty()) {
      rest.put("further", teaching.further());
    }
    List<Map<String, Object>> figures = new ArrayList<>();
    for (LessonPack.Figure each : teaching.figures()) {
      Map<String, Object> figure = new LinkedHashMap<>();
      figure.put("says", each.says());
      figure.put("source", each.source());
      figures.add(figure);
    }
    list(rest, "figures", figures);
    return rest;
  }

  private static Map<String, Object> measure(MeasureAsked asked) {
    Map<String, Object> measure = new LinkedHashMap<>();
    measure.put("gauge_mm", DraftYaml.value(number(asked.gaugeMm())));
    measure.put("readings", asked.readings());
    measure.put("rest_seconds", DraftYaml.value(number(asked.restSeconds())));
    measure.put("hold_seconds", DraftYaml.value(number(asked.holdSeconds())));
    measure.put("fold", asked.fold().key());
    measure.put("pull", asked.pull().key());
    Double load = asked.loadG();
    if (load != null) {
      measure.put("load_g", DraftYaml.value(number(load)));
    }
    return measure;
  }

  private static void list(Map<String, Object> rest, String name, List<?> values) {
    if (!values.isEmpty()) {
      rest.put(name, values);
    }
  }

  private void put(String field, @Nullable String text) {
    if (text != null && !text.isEmpty()) {
      fields.put(field, text);
    }
  }

  private static String number(@Nullable Double value) {
    return value == null ? "" : BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }
}
