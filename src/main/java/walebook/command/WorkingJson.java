package walebook.command;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import walebook.quantity.Measured;
import walebook.words.Words;
import walebook.working.Source;
import walebook.working.Step;
import walebook.working.Working;

/** A working for programs. */
final class WorkingJson {
  private WorkingJson() {}

  static ObjectNode of(Working working, Words words) {
    ObjectNode json = Json.object();
    json.put("name", working.name());
    json.put("title", words.say(working.title()));
    json.set("result", result(working.result()));
    json.put(
        "verdict",
        working.verdict() == null ? null : working.verdict().name().toLowerCase(Locale.ROOT));
    json.put("says", words.say(working.says()));
    ArrayNode steps = json.putArray("steps");
    for (Step each : working.steps()) {
      ObjectNode step = steps.addObject();
      step.put("says", words.say(each.says()));
      step.put("formula", each.formula());
      step.put("numbers", each.numbers());
    }
    ArrayNode assumptions = json.putArray("assumptions");
    working.assumptions().forEach(each -> assumptions.add(words.say(each)));
    ArrayNode cautions = json.putArray("cautions");
    working.cautions().forEach(each -> cautions.add(words.say(each.says())));
    ArrayNode sources = json.putArray("sources");
    for (Source each : working.sources()) {
      ObjectNode source = sources.addObject();
      source.put("kind", each.kind().name().toLowerCase(Locale.ROOT));
      source.put("citation", each.citation());
    }
    return json;
  }

  private static @Nullable ObjectNode result(@Nullable Measured measured) {
    if (measured == null) {
      return null;
    }
    ObjectNode json = Json.object();
    json.put("value", measured.value());
    json.put("unit", measured.unit().sign());
    json.put("standardUncertainty", measured.standardUncertainty());
    return json;
  }
}
