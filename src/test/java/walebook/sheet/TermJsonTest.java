package walebook.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import walebook.record.PieceCode;
import walebook.record.TestPiece;

/** The record for machines, held against its schema (JSON Schema 2020-12) by another library. */
class TermJsonTest {
  @TempDir Path folder;

  private static Schema schema() throws IOException {
    try (InputStream in = TermJson.class.getResourceAsStream("term.schema.json")) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(text, InputFormat.JSON);
    }
  }

  private String json(HarbourClass harbour, boolean names) throws IOException {
    return Files.readString(harbour.export(folder.resolve("t.json"), names).value());
  }

  @Test
  void itIsAsItsSchemaSays() throws IOException {
    try (HarbourClass harbour = HarbourClass.in(folder.resolve("a.walebook"), 40)) {
      String text = json(harbour, false);
      assertThat(schema().validate(text, InputFormat.JSON)).isEmpty();
      String wrong = text.replaceFirst("\"invented\":true", "\"invented\":1");
      assertThat(schema().validate(wrong, InputFormat.JSON)).isNotEmpty();
      for (String name : HarbourClass.NAMES) {
        assertThat(text).doesNotContain(name);
      }
    }
  }

  @Test
  void everyPieceIsThereAndEveryValueHasItsColumn() throws IOException {
    try (HarbourClass harbour = HarbourClass.in(folder.resolve("b.walebook"), 40)) {
      JsonNode json = new JsonMapper().readTree(json(harbour, true));
      for (JsonNode table : json.get("tables")) {
        Set<String> keys = new HashSet<>();
        table.get("columns").forEach(each -> keys.add(each.get("key").asString()));
        assertThat(keys).hasSameSizeAs(table.get("columns"));
        table.get("rows").forEach(row -> assertThat(keys).containsAll(row.propertyNames()));
      }
      JsonNode pieces = json.get("tables").get(2).get("rows");
      assertThat(pieces).hasSize(40);
      for (JsonNode row : pieces) {
        TestPiece piece =
            harbour.pieces.stream()
                .filter(each -> PieceCode.spoken(each.code()).equals(row.get("code").asString()))
                .findFirst()
                .orElseThrow();
        assertThat(row.get("seam-stretch").asDouble())
            .isCloseTo(piece.measure().seamStretchPercent(), within(1e-9));
        assertThat(row.get("sewn-on").asString()).isEqualTo(piece.whose().sewnOn().toString());
        assertThat(row.get("layers").asInt()).isEqualTo(2);
      }
    }
  }
}
