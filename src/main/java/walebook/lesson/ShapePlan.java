package walebook.lesson;

import static walebook.lesson.ShapePack.list;
import static walebook.lesson.ShapePack.string;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;
import walebook.record.Grain;
import walebook.record.Keyed;

/** Makes the typed plan of a tree that has passed every check. */
final class ShapePlan {
  private ShapePlan() {}

  static Plan of(JsonNode plan) {
    List<Plan.ClothSlot> cloths =
        list(plan, "cloths", e -> new Plan.ClothSlot(string(e, "slot"), string(e, "says")));
    Tiers tiers = tiers(plan.path("tiers"));
    if (string(plan, "kind").equals(ReadingsPlan.KIND)) {
      List<Grain> grains = list(plan, "grains", e -> Keyed.of(Grain.class, e.asString()));
      int repeats = plan.path("repeats").asInt();
      JsonNode control = plan.path("control");
      return new ReadingsPlan(
          string(plan, "question"),
          cloths,
          grains,
          control.isObject() ? cell(control) : null,
          repeats,
          tiers);
    }
    return new PiecesPlan(
        string(plan, "question"),
        cloths,
        settings(plan.path("fixed")),
        settings(plan.path("control")),
        list(plan, "factors", ShapePlan::factor),
        tiers);
  }

  private static ReadingsPlan.Cell cell(JsonNode node) {
    return new ReadingsPlan.Cell(
        string(node, "cloth"), Keyed.of(Grain.class, string(node, "grain")));
  }

  private static Tiers tiers(JsonNode node) {
    return new Tiers(
        share(node.path("core")), share(node.path("standard")), share(node.path("own")));
  }

  private static Tiers.Share share(JsonNode node) {
    return new Tiers.Share(node.path("cells").asInt(), string(node, "says"));
  }

  private static Settings settings(JsonNode node) {
    Map<SettingKey, String> values = new EnumMap<>(SettingKey.class);
    node.properties()
        .forEach(
            each ->
                values.put(
                    Keyed.of(SettingKey.class, each.getKey()), CheckShape.shown(each.getValue())));
    return new Settings(values);
  }

  private static PiecesPlan.Factor factor(JsonNode node) {
    return new PiecesPlan.Factor(
        Keyed.of(SettingKey.class, string(node, "key")),
        string(node, "says"),
        list(node, "levels", CheckShape::shown));
  }
}
