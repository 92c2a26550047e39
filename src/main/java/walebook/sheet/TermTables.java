package walebook.sheet;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import walebook.words.Words;

/** Every table as a CSV file of its own in one zip, with one that explains the columns of all. */
final class TermTables {
  private static final String ENDING = ".csv";

  private final TermFacts facts;
  private final Words words;
  private final ExportProgress progress;

  private TermTables(TermFacts facts, Words words, ExportProgress progress) {
    this.facts = facts;
    this.words = words;
    this.progress = progress;
  }

  /** Writes it; the stream stays open. */
  static void write(TermFacts facts, Words words, OutputStream out, ExportProgress progress)
      throws IOException {
    progress.at(0);
    ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
    new TermTables(facts, words, progress).write(zip);
    zip.finish();
    progress.at(1);
  }

  private void write(ZipOutputStream zip) throws IOException {
    List<Explained> explained = new ArrayList<>(explain("sheet.term.name", TermLines.all(words)));
    table(zip, "sheet.term.name", TermLines.all(words), List.of(facts), 0);
    for (SheetPart<?> each : TermParts.of(facts, words)) {
      part(zip, each);
      explained.addAll(explain(each.name(), each.columns()));
    }
    table(zip, "sheet.columns.name", Explained.columns(), explained, 0);
  }

  private <T> void part(ZipOutputStream zip, SheetPart<T> part) throws IOException {
    table(zip, part.name(), part.columns(), part.rows(), part.streamed() ? part.count() : 0);
  }

  /**
   * Writes one table.
   *
   * @param told how many rows to tell the progress of; 0 for a short one
   */
  private <T> void table(
      ZipOutputStream zip, String name, List<Column<T>> columns, Iterable<T> rows, int told)
      throws IOException {
    ZipEntry entry = new ZipEntry(key(name) + ENDING);
    entry.setTimeLocal(facts.written());
    zip.putNextEntry(entry);
    Writer text = new OutputStreamWriter(zip, StandardCharsets.UTF_8);
    CsvRows.write(
        text,
        columns,
        rows,
        facts.cover(),
        words,
        done -> {
          if (told > 0) {
            progress.at((double) done / told);
          }
        });
    text.flush();
    zip.closeEntry();
  }

  /** The same key as in the JSON. */
  private static String key(String name) {
    return name.split("\\.")[1];
  }

  private <T> List<Explained> explain(String sheet, List<Column<T>> columns) {
    return Explained.of(words.say(sheet), columns, words);
  }
}
