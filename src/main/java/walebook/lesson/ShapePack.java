package walebook.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import walebook.record.Fold;
import walebook.record.Grain;
import walebook.record.Keyed;
import walebook.record.Pull;

/** Makes the typed pack of a tree that has passed every check. */
final class ShapePack {
  private ShapePack() {}

  static LessonPack of(JsonNode pack, LessonText text, PackFiles files) {
    return new LessonPack(
        new LessonPack.About(
            string(pack, "name"),
            string(pack, "version"),
            string(pack, "title"),
            string(pack, "summary"),
            pack.path("minutes").asInt()),
        teaching(pack),
        new LessonPack.Needs(
            list(pack, "materials", ShapePack::material), texts(pack, "for_the_room")),
        list(pack, "log", each -> Keyed.of(LogField.class, each.asString())),
        measure(pack.path("measure")),
        ShapePlan.of(pack.path("plan")),
        list(pack, "success", ShapePack::success),
        text,
        files);
  }

  private static LessonPack.Teaching teaching(JsonNode pack) {
    return new LessonPack.Teaching(
        list(
            pack,
            "steps",
            e -> new LessonPack.StepTime(string(e, "heading"), e.path("minutes").asInt())),
        texts(pack, "aims"),
        list(
            pack, "cautions", e -> new LessonPack.PackCaution(string(e, "key"), string(e, "says"))),
        texts(pack, "access"),
        list(
            pack,
            "trouble",
            e -> new LessonPack.Trouble(string(e, "fault"), texts(e, "steps"), string(e, "says"))),
        string(pack, "further"),
        list(pack, "figures", e -> new LessonPack.Figure(string(e, "says"), string(e, "source"))));
  }

  private static Material material(JsonNode node) {
    String cloth = string(node, "cloth");
    String grain = string(node, "grain");
    return new Material(
        string(node, "what"),
        number(node, "count"),
        cloth.isEmpty() ? null : cloth,
        number(node, "along_mm"),
        number(node, "across_mm"),
        grain.isEmpty() ? null : Keyed.of(Grain.class, grain),
        number(node, "thread_m"));
  }

  private static MeasureAsked measure(JsonNode node) {
    return new MeasureAsked(
        node.path("gauge_mm").asDouble(),
        node.path("readings").asInt(),
        node.path("rest_seconds").asDouble(),
        node.path("hold_seconds").asDouble(),
        Keyed.of(Fold.class, string(node, "fold")),
        Keyed.of(Pull.class, string(node, "pull")),
        number(node, "load_g"));
  }

  private static Success success(JsonNode node) {
    return new Success(
        Keyed.of(Success.Kind.class, string(node, "check")),
        node.path("value").asDouble(),
        string(node, "says"));
  }

  /** The text of a field, stripped; empty when there is none. */
  static String string(JsonNode node, String field) {
    return node.path(field).asString("").strip();
  }

  static <T> List<T> list(JsonNode node, String field, Function<JsonNode, T> each) {
    List<T> all = new ArrayList<>();
    node.path(field).forEach(item -> all.add(each.apply(item)));
    return all;
  }

  private static List<String> texts(JsonNode node, String field) {
    return list(node, field, each -> each.asString().strip());
  }

  private static @Nullable Double number(JsonNode node, String field) {
    return node.has(field) ? node.path(field).asDouble() : null;
  }
}
