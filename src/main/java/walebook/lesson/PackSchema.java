package walebook.lesson;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;

/** The JSON Schema (2020-12) of pack.yaml, from the program's own resources and nowhere else. */
final class PackSchema {
  private static final String RESOURCE = "/walebook/lesson-packs/pack.schema.json";

  private final Schema schema;

  /** How names and keys are written. */
  static final String KEY = "[a-z][a-z0-9]*(-[a-z0-9]+)*";

  private PackSchema(Schema schema) {
    this.schema = schema;
  }

  static PackSchema load() {
    SchemaRegistry registry =
        SchemaRegistry.withDefaultDialect(
            SpecificationVersion.DRAFT_2020_12,
            made -> made.schemaLoader(loader -> loader.fetchRemoteResources(false)));
    return new PackSchema(registry.getSchema(text(), InputFormat.JSON));
  }

  List<Error> errors(JsonNode pack) {
    return schema.validate(pack);
  }

  JsonNode root() {
    return schema.getSchemaNode();
  }

  /** The schema that an error's keyword stands in. */
  JsonNode holderOf(Error error) {
    String fragment = String.valueOf(error.getSchemaLocation().getFragment());
    return root().at(fragment.substring(0, Math.max(0, fragment.lastIndexOf('/'))));
  }

  /** Fields known beside the one an error speaks of. */
  List<String> fieldsBeside(Error error) {
    List<String> names = new ArrayList<>();
    holderOf(error).path("properties").properties().forEach(each -> names.add(each.getKey()));
    return names;
  }

  /** Keys of the faults that the program knows. */
  List<String> faults() {
    List<String> keys = new ArrayList<>();
    root().at("/$defs/fault/examples").forEach(each -> keys.add(each.asString()));
    return keys;
  }

  private static String text() {
    try (InputStream in = PackSchema.class.getResourceAsStream(RESOURCE)) {
      if (in == null) {
        throw new IllegalStateException("missing from the program: " + RESOURCE);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
