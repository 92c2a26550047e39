package walebook.lesson;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;

/** Reads pack.yaml (YAML 1.2, JSON schema) into a tree that knows its lines and columns. */
final class ReadYaml {
  private static final JsonNodeFactory MAKE = JsonNodeFactory.instance;

  /** Beyond this a double no longer tells whole numbers apart, and a pack has no use for it. */
  private static final double MOST = 1e15;

  private final String file;
  private final Map<String, YamlDoc.Spot> values = new HashMap<>();
  private final Map<String, YamlDoc.Spot> keys = new HashMap<>();
  private final List<Problem> problems = new ArrayList<>();

  private ReadYaml(String file) {
    this.file = file;
  }

  static Answer<YamlDoc> read(String file, String yaml) {
    LoadSettings settings =
        LoadSettings.builder()
            .setLabel(file)
            .setMaxAliasesForCollections(0)
            .setAllowNonScalarKeys(true)
            .build();
    List<Problem> tricks = GuardYaml.check(file, yaml, settings);
    if (!tricks.isEmpty()) {
      return Answer.bad(tricks);
    }
    Place.Spot start = new Place.Spot(file, 1, 1, "");
    try {
      return new Compose(settings)
          .composeString(yaml)
          .map(node -> Answer.good(new ReadYaml(file).tree(node)))
          .orElseGet(() -> Answer.bad(Problem.refuse("pack.empty", start, "", "format: 1")));
    } catch (YamlEngineException e) { // what the stream alone could not show
      String said = ReadRuns.firstLine(String.valueOf(e.getMessage()));
      return Answer.bad(Problem.refuse("pack.yaml", start, said, ""));
    }
  }

  private YamlDoc tree(Node node) {
    JsonNode root = value("", node);
    return new YamlDoc(file, root, values, keys, problems);
  }

  private JsonNode value(String pointer, Node node) {
    values.put(pointer, spot(node));
    if (node instanceof MappingNode map) {
      ObjectNode object = MAKE.objectNode();
      for (NodeTuple entry : map.getValue()) {
        entry(pointer, object, entry);
      }
      return object;
    }
    if (node instanceof SequenceNode sequence) {
      ArrayNode array = MAKE.arrayNode();
      for (Node each : sequence.getValue()) {
        array.add(value(pointer + "/" + array.size(), each));
      }
      return array;
    }
    return scalar((ScalarNode) node);
  }

  private void entry(String pointer, ObjectNode object, NodeTuple entry) {
    Node key = entry.getKeyNode();
    if (!(key instanceof ScalarNode named)) {
      problems.add(Problem.refuse("pack.yaml-key", place(key, pointer), "", ""));
      return;
    }
    String name = named.getValue();
    String under = YamlDoc.under(pointer, name);
    if (object.has(name)) {
      problems.add(Problem.refuse("pack.yaml-twice", place(key, under), name, ""));
      return;
    }
    keys.put(under, spot(key));
    object.set(name, value(under, entry.getValueNode()));
  }

  private static JsonNode scalar(ScalarNode node) {
    String text = node.getValue();
    Tag tag = node.getTag();
    if (tag.equals(Tag.NULL)) {
      return MAKE.nullNode();
    } else if (tag.equals(Tag.BOOL)) {
      return MAKE.booleanNode(Boolean.parseBoolean(text));
    } else if (tag.equals(Tag.INT) && text.length() < 16) {
      return MAKE.numberNode(new BigInteger(text).longValueExact());
    } else if (tag.equals(Tag.FLOAT) || tag.equals(Tag.INT)) {
      return number(text);
    }
    return MAKE.stringNode(text);
  }

  /** A number as a double; one too large for that, or none at all, stays as typed. */
  private static JsonNode number(String text) {
    if (text.endsWith("inf") || text.endsWith("nan") || text.endsWith("NaN")) {
      return MAKE.stringNode(text);
    }
    try {
      double value = Double.parseDouble(text);
      if (!(Math.abs(value) < MOST)) {
        return MAKE.stringNode(text);
      } else if (value == Math.rint(value)) {
        return MAKE.numberNode((long) value); // 2.0 and 2 are one level, not two
      }
      return MAKE.numberNode(value);
    } catch (NumberFormatException e) {
      return MAKE.stringNode(text);
    }
  }

  private Place place(Node node, String pointer) {
    YamlDoc.Spot spot = spot(node);
    return new Place.Spot(file, spot.line(), spot.column(), YamlDoc.field(pointer));
  }

  private static YamlDoc.Spot spot(Node node) {
    return node.getStartMark()
        .map(mark -> new YamlDoc.Spot(mark.getLine() + 1, mark.getColumn() + 1))
        .orElseGet(() -> new YamlDoc.Spot(1, 1));
  }
}
