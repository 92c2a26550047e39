package walebook.sheet;

import java.io.OutputStream;
import java.util.List;
import tools.jackson.core.JsonEncoding;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.json.JsonFactory;
import walebook.words.Words;

/**
 * The same tables for machines: one JSON text, written as it is read, with numbers as numbers and
 * dates by ISO 8601. Its shape stands in {@code term.schema.json}, JSON Schema 2020-12.
 */
final class TermJson {
  /** Raised when the shape changes. */
  private static final int VERSION = 1;

  private final TermFacts facts;
  private final Words words;
  private final ExportProgress progress;

  private TermJson(TermFacts facts, Words words, ExportProgress progress) {
    this.facts = facts;
    this.words = words;
    this.progress = progress;
  }

  /** Writes it; the stream stays open. */
  static void write(TermFacts facts, Words words, OutputStream out, ExportProgress progress) {
    progress.at(0);
    JsonFactory plain =
        JsonFactory.builder()
            .disable(tools.jackson.core.StreamWriteFeature.AUTO_CLOSE_TARGET)
            .build();
    try (JsonGenerator json =
        plain.createGenerator(
            tools.jackson.core.ObjectWriteContext.empty(), out, JsonEncoding.UTF8)) {
      new TermJson(facts, words, progress).write(json);
    }
    progress.at(1);
  }

  private void write(JsonGenerator json) {
    json.writeStartObject();
    json.writeStringProperty("format", "walebook-term");
    json.writeNumberProperty("version", VERSION);
    json.writeStringProperty("book", words(facts.book().name()));
    json.writeBooleanProperty("invented", facts.book().invented());
    json.writeStringProperty("class", words(facts.schoolClass().name()));
    json.writeStringProperty("term", facts.term() == null ? "" : words(facts.term().name()));
    json.writeBooleanProperty("names", facts.names());
    json.writeNumberProperty("setAside", facts.comparison().setAside());
    json.writeStringProperty("written", facts.written().toString());
    json.writeArrayPropertyStart("tables");
    List<SheetPart<?>> parts = TermParts.of(facts, words);
    for (SheetPart<?> each : parts) {
      table(json, each);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private String words(String text) {
    return CellText.clean(facts.cover().apply(text));
  }

  private <T> void table(JsonGenerator json, SheetPart<T> part) {
    json.writeStartObject();
    json.writeStringProperty("key", part.name().split("\\.")[1]);
    json.writeStringProperty("name", words.say(part.name()));
    json.writeArrayPropertyStart("columns");
    List<Explained> explained = Explained.of("", part.columns(), words);
    for (int i = 0; i < part.columns().size(); i++) {
      json.writeStartObject();
      json.writeStringProperty("key", part.columns().get(i).key());
      json.writeStringProperty("title", words(explained.get(i).column()));
      json.writeStringProperty("unit", explained.get(i).unit());
      json.writeStringProperty("says", words(explained.get(i).what()));
      json.writeStringProperty("how", explained.get(i).how());
      json.writeStringProperty("source", explained.get(i).source());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayPropertyStart("rows");
    int done = 0;
    for (T row : part.rows()) {
      row(json, part.columns(), row);
      if (part.streamed() && ++done % 50 == 0) {
        progress.at((double) done / part.count());
      }
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private <T> void row(JsonGenerator json, List<Column<T>> columns, T row) {
    json.writeStartObject();
    for (Column<T> each : columns) {
      Value value = each.value().apply(row);
      if (value instanceof Value.Text text) {
        json.writeStringProperty(each.key(), words(text.text()));
      } else if (value instanceof Value.Figure figure) {
        number(json, each, figure.number());
      } else if (value instanceof Value.Day day) {
        json.writeStringProperty(each.key(), day.date().toString());
      } else if (value instanceof Value.Moment moment) {
        json.writeStringProperty(each.key(), moment.time().toString());
      }
    }
    json.writeEndObject();
  }

  private static <T> void number(JsonGenerator json, Column<T> column, double number) {
    if (column.format().isWhole() && number == Math.rint(number)) {
      json.writeNumberProperty(column.key(), (long) number);
    } else {
      json.writeNumberProperty(column.key(), number);
    }
  }
}
