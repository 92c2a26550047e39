package walebook.sheet;

import java.io.IOException;
import java.io.OutputStream;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ooxml.POIXMLProperties.CoreProperties;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import walebook.words.Words;

/**
 * The workbook of one class: summary, charts, comparisons, every test piece, cloths, progress, and
 * what each column is. The table of pieces is streamed into the file some rows at a time; the
 * others are small and stay in memory, since a chart needs its cells there.
 */
public final class TermWorkbook {
  /** What part of the work is done before and after the rows of pieces. */
  private static final double BEFORE_ROWS = 0.1;

  private static final double AFTER_ROWS = 0.9;

  private final TermFacts facts;
  private final Words words;
  private final ExportProgress progress;

  private TermWorkbook(TermFacts facts, Words words, ExportProgress progress) {
    this.facts = facts;
    this.words = words;
    this.progress = progress;
  }

  /** Writes the whole workbook; the stream stays open. */
  public static void write(TermFacts facts, Words words, OutputStream out, ExportProgress progress)
      throws IOException {
    new TermWorkbook(facts, words, progress).write(out);
  }

  private void write(OutputStream out) throws IOException {
    progress.at(0);
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      Pen pen = new Pen(new Styles(workbook), facts.cover());
      List<SheetPart<?>> parts = TermParts.of(facts, words);
      SheetPart<?> streamed = parts.stream().filter(SheetPart::streamed).findFirst().orElseThrow();
      write(workbook, parts, streamed, pen, out);
    }
    progress.at(1);
  }

  /** The rows of pieces are begun first, on a thread of their own. */
  private <T> void write(
      XSSFWorkbook workbook,
      List<SheetPart<?>> parts,
      SheetPart<T> streamed,
      Pen pen,
      OutputStream out)
      throws IOException {
    try (Ahead<RowXml.Part> rows =
        new Ahead<>(() -> new RowXml<>(streamed.columns(), streamed.rows().iterator(), pen))) {
      properties(workbook);
      TermSheet.write(sheet(workbook, "sheet.term.name"), facts, parts, pen, words);
      XSSFSheet charts = ChartSheet.isWanted(facts) ? sheet(workbook, "sheet.charts.name") : null;
      List<Explained> explained = new ArrayList<>(explain("sheet.term.name", TermLines.all(words)));
      for (SheetPart<?> each : parts) {
        table(workbook, each, pen);
        explained.addAll(explain(each.name(), each.columns()));
      }
      if (charts != null) {
        ChartSheet.draw(charts, facts, pen, words);
      }
      List<Column<Explained>> columns = Explained.columns();
      explained.addAll(explain("sheet.columns.name", columns));
      table(
          workbook, SheetPart.of("sheet.columns.name", "", "ColumnTable", columns, explained), pen);
      if (facts.choice().studentSheets()) {
        StudentSheets.write(workbook, facts, pen, words);
      }
      progress.at(BEFORE_ROWS);
      stream(workbook, streamed, rows, out);
    }
  }

  private void stream(
      XSSFWorkbook workbook, SheetPart<?> part, Ahead<RowXml.Part> rows, OutputStream out)
      throws IOException {
    String name = words.say(part.name());
    // Some readers take no more rows than a sheet says it has.
    workbook
        .getSheet(name)
        .setDimensionOverride(new CellRangeAddress(0, part.count(), 0, part.columns().size() - 1));
    try (StreamedSheet streaming = new StreamedSheet(workbook, name, to -> rows(part, rows, to))) {
      streaming.write(out);
    }
  }

  private void rows(SheetPart<?> part, Ahead<RowXml.Part> rows, OutputStream out)
      throws IOException {
    while (rows.hasNext()) {
      RowXml.Part some = rows.next();
      some.to(out);
      progress.at(BEFORE_ROWS + (AFTER_ROWS - BEFORE_ROWS) * some.done() / part.count());
    }
    progress.at(AFTER_ROWS);
  }

  private <T> void table(XSSFWorkbook workbook, SheetPart<T> part, Pen pen) {
    XSSFSheet sheet = sheet(workbook, part.name());
    TableFrame.draw(sheet, part.table(), part.columns(), part.count(), pen, words);
    if (!part.streamed()) {
      TableRows.write(sheet, part.columns(), part.rows(), pen);
    }
    if (part.count() > 0) {
      part.beside().draw(sheet, part.columns(), part.count());
    }
  }

  private XSSFSheet sheet(XSSFWorkbook workbook, String name) {
    return workbook.createSheet(words.say(name));
  }

  private <T> List<Explained> explain(String sheet, List<Column<T>> columns) {
    return Explained.of(words.say(sheet), columns, words);
  }

  /** The title and the day, and nobody's name: neither the tutor's nor the machine's user. */
  private void properties(XSSFWorkbook workbook) {
    CoreProperties properties = workbook.getProperties().getCoreProperties();
    String title = words.say("sheet.property.title", facts.schoolClass().name());
    properties.setTitle(CellText.clean(facts.cover().apply(title)));
    properties.setCreator(words.say("sheet.property.creator"));
    Date written = Date.from(facts.written().toInstant(ZoneOffset.UTC));
    properties.setCreated(Optional.of(written));
    properties.setModified(Optional.of(written));
  }
}
