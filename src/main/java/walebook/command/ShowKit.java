package walebook.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import walebook.kit.ClothToBuy;
import walebook.kit.CuttingPlan;
import walebook.kit.Kit;
import walebook.kit.KitLine;
import walebook.kit.Placed;
import walebook.kit.ScrapAnswer;
import walebook.quantity.Show;
import walebook.words.Words;
import walebook.working.Working;

/** A kit as a list to buy by, and the answer about scraps. */
final class ShowKit {
  private ShowKit() {}

  static String text(Kit kit, Words words) {
    Table table =
        new Table(
            List.of(
                words.say("command.column.what"),
                words.say("command.column.per-student"),
                words.say("command.column.for-class"),
                words.say("command.column.unit"),
                words.say("command.column.cost")));
    for (KitLine each : kit.lines()) {
      table.row(
          List.of(
              words.say(each.what()),
              number(each.perStudent()),
              number(each.forClass()),
              each.unit().sign(),
              each.cost() == null ? "" : Show.fixed(each.cost(), 2)));
    }
    List<String> lines = new ArrayList<>();
    lines.add(words.say("command.say.kit", kit.title(), kit.students()));
    lines.add("");
    lines.add(table.toString());
    lines.add("");
    lines.add(words.say("command.say.kit-spare", Show.upTo(kit.sparePercent(), 1)));
    if (kit.lines().stream().anyMatch(each -> each.cost() != null)) {
      lines.add(words.say("command.say.kit-cost", Show.fixed(kit.cost(), 2), kit.unpriced()));
    }
    kit.says().forEach(each -> lines.add(words.say(each)));
    for (ClothToBuy each : kit.cloths()) {
      lines.add("");
      lines.add(WorkingText.of(each.working(), words));
    }
    Working thread = kit.thread();
    if (thread != null) {
      lines.add("");
      lines.add(WorkingText.of(thread, words));
    }
    return String.join(System.lineSeparator(), lines);
  }

  private static String number(@Nullable Double value) {
    return value == null ? "" : Show.upTo(value, 2);
  }

  static ObjectNode json(Kit kit, Words words) {
    ObjectNode json = Json.object();
    json.put("lesson", kit.title());
    json.put("students", kit.students());
    ArrayNode lines = json.putArray("lines");
    for (KitLine each : kit.lines()) {
      ObjectNode line = lines.addObject();
      line.put("kind", each.kind().name().toLowerCase(Locale.ROOT));
      line.put("what", words.say(each.what()));
      line.put("perStudent", each.perStudent());
      line.put("forClass", each.forClass());
      line.put("unit", each.unit().sign());
      line.put("price", each.price());
      line.put("cost", each.cost());
    }
    json.put("cost", kit.cost());
    json.put("unpriced", kit.unpriced());
    ArrayNode remarks = json.putArray("remarks");
    kit.says().forEach(each -> remarks.add(words.say(each)));
    ArrayNode cloths = json.putArray("cloths");
    for (ClothToBuy each : kit.cloths()) {
      ObjectNode cloth = cloths.addObject();
      cloth.put("name", each.name());
      cloth.put("buyMm", each.buyMm());
      cloth.set("plan", json(each.plan()));
      cloth.set("working", WorkingJson.of(each.working(), words));
    }
    Working thread = kit.thread();
    json.set("thread", thread == null ? null : WorkingJson.of(thread, words));
    return json;
  }

  private static ObjectNode json(CuttingPlan plan) {
    ObjectNode json = Json.object();
    json.put("acrossMm", plan.acrossMm());
    json.put("alongMm", plan.alongMm());
    json.put("wastePercent", plan.wastePercent());
    ArrayNode placed = json.putArray("placed");
    for (Placed each : plan.placed()) {
      ObjectNode piece = placed.addObject();
      piece.put("name", plan.pieces().get(each.piece()).name());
      piece.put("xMm", each.xMm());
      piece.put("yMm", each.yMm());
      piece.put("acrossMm", each.acrossMm());
      piece.put("alongMm", each.alongMm());
    }
    return json;
  }

  static String text(ScrapAnswer answer, Words words) {
    Table table =
        new Table(
            List.of(
                words.say("command.column.scrap"),
                words.say("command.column.what"),
                words.say("command.column.pieces")));
    for (int i = 0; i < answer.scraps().size(); i++) {
      CuttingPlan plan = answer.plans().get(i);
      for (int kind = 0; kind < plan.pieces().size(); kind++) {
        if (plan.count(kind) > 0) {
          table.row(
              List.of(
                  answer.scraps().get(i).name(),
                  plan.pieces().get(kind).name(),
                  String.valueOf(plan.count(kind))));
        }
      }
    }
    return String.join(
        System.lineSeparator(), WorkingText.of(answer.working(), words), "", table.toString());
  }

  static ObjectNode json(ScrapAnswer answer, Words words) {
    ObjectNode json = Json.object();
    json.put("outcome", answer.outcome().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    json.put("says", words.say(answer.says()));
    ArrayNode missing = json.putArray("missing");
    answer.missing().forEach(missing::add);
    ArrayNode scraps = json.putArray("scraps");
    for (int i = 0; i < answer.scraps().size(); i++) {
      ObjectNode scrap = json(answer.plans().get(i));
      scrap.put("name", answer.scraps().get(i).name());
      scraps.add(scrap);
    }
    return json;
  }
}
