package walebook.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import walebook.record.Fold;
import walebook.record.Grain;
import walebook.record.Keyed;
import walebook.record.MachineKind;
import walebook.record.Method;
import walebook.record.NeedlePoint;
import walebook.record.Pull;

/** The schema speaks of the same things as the program. */
class PackSchemaTest {
  private static final JsonNode SCHEMA = PackSchema.load().root();

  /** Held against the meta-schema of JSON Schema 2020-12, as its authors publish it. */
  @Test
  void isASchemaItself() {
    Schema meta =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
    assertThat(meta.validate(SCHEMA.toString(), InputFormat.JSON)).isEmpty();
  }

  @Test
  void choicesAreTheProgramsKeys() {
    assertThat(choices("/$defs/grain/enum")).containsExactlyElementsOf(keys(Grain.values()));
    assertThat(choices("/$defs/machine/enum"))
        .containsExactlyElementsOf(keys(MachineKind.values()));
    assertThat(choices("/$defs/needle_point/enum"))
        .containsExactlyElementsOf(keys(NeedlePoint.values()));
    assertThat(choices("/$defs/settings/properties/method/enum"))
        .containsExactlyElementsOf(keys(Method.values()));
    assertThat(choices("/$defs/measure/properties/fold/enum"))
        .containsExactlyElementsOf(keys(Fold.values()));
    assertThat(choices("/$defs/measure/properties/pull/enum"))
        .containsExactlyElementsOf(keys(Pull.values()));
    assertThat(choices("/$defs/logged/enum")).containsExactlyElementsOf(keys(LogField.values()));
    assertThat(choices("/$defs/success/properties/check/enum"))
        .containsExactlyElementsOf(keys(Success.Kind.values()));
    List<String> settings = new ArrayList<>();
    SCHEMA.at("/$defs/settings/properties").properties().forEach(e -> settings.add(e.getKey()));
    assertThat(settings).containsExactlyElementsOf(keys(SettingKey.values()));
  }

  /** A keyword that no sentence of ours covers would show the validator's own English. */
  @Test
  void onlyKeywordsWithOwnSentencesAreUsed() {
    Set<String> used = new TreeSet<>();
    keywords(SCHEMA, used);
    assertThat(used)
        .isSubsetOf(
            "type",
            "enum",
            "pattern",
            "minimum",
            "exclusiveMinimum",
            "maximum",
            "minLength",
            "maxLength",
            "minItems",
            "maxItems",
            "uniqueItems",
            "required",
            "additionalProperties",
            // these hold schemas, choose between them, or only tell
            "properties",
            "items",
            "allOf",
            "if",
            "then",
            "else",
            "const",
            "$ref",
            "$defs",
            "$id",
            "$schema",
            "title",
            "description",
            "examples");
  }

  private static void keywords(JsonNode schema, Set<String> used) {
    for (var each : schema.properties()) {
      used.add(each.getKey());
      switch (each.getKey()) {
        case "properties", "$defs" ->
            each.getValue().properties().forEach(inner -> keywords(inner.getValue(), used));
        case "items", "if", "then", "else" -> keywords(each.getValue(), used);
        case "allOf" -> each.getValue().forEach(inner -> keywords(inner, used));
        default -> {}
      }
    }
  }

  private static List<String> choices(String pointer) {
    List<String> choices = new ArrayList<>();
    SCHEMA.at(pointer).forEach(each -> choices.add(each.asString()));
    return choices;
  }

  private static List<String> keys(Keyed... values) {
    return Arrays.stream(values).map(Keyed::key).toList();
  }
}
