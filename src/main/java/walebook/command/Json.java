package walebook.command;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import walebook.record.Keyed;

/** JSON as every command writes it: numbers as numbers, what is not known as null. */
final class Json {
  private Json() {}

  static ObjectNode object() {
    return JsonNodeFactory.instance.objectNode();
  }

  static ArrayNode array() {
    return JsonNodeFactory.instance.arrayNode();
  }

  static void key(ObjectNode node, String name, @Nullable Keyed choice) {
    node.put(name, Keyed.keyOf(choice));
  }

  static void date(ObjectNode node, String name, @Nullable LocalDate date) {
    node.put(name, date == null ? null : date.toString());
  }

  static String write(JsonNode node) {
    return JsonMapper.shared().writerWithDefaultPrettyPrinter().writeValueAsString(node);
  }
}
