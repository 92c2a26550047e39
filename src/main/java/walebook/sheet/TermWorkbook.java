package walebook.sheet;

import java.io.IOException;
import java.io.OutputStream;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ooxml.POIXMLProperties.CoreProperties;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import walebook.compare.SettingRow;
import walebook.record.TestPiece;
import walebook.words.Words;

/**
 * The workbook of one class: summary, comparison with a chart, every test piece, cloths, progress,
 * and what each column is. The table of pieces is streamed to the disk row by row; the others are
 * small and stay in memory, since a chart needs its cells there.
 */
public final class TermWorkbook {
  /** Rows of the streamed table that are in memory at a time. */
  private static final int WINDOW = 100;

  /** How often progress is told, in rows. */
  private static final int TELL_EVERY = 50;

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
      List<Column<TestPiece>> pieces = PieceColumns.all(facts.lookup(), words);
      properties(workbook);
      TermSheet.write(sheet(workbook, "sheet.term.name"), facts, pen, words);
      List<Column<SettingRow>> comparison = comparison(workbook, pen);
      XSSFSheet streamed = sheet(workbook, "sheet.pieces.name");
      TableFrame.draw(streamed, "PieceTable", pieces, facts.pieces().size(), pen, words);
      var cloths = ClothColumns.all(words);
      table(workbook, "sheet.cloths.name", "ClothTable", cloths, facts.cloths(), pen);
      var rows = ProgressColumns.of(facts);
      table(workbook, "sheet.progress.name", "ProgressTable", rows, facts.progress().rows(), pen);
      List<Explained> explained = new ArrayList<>();
      explained.addAll(explain("sheet.term.name", TermLines.all(words)));
      explained.addAll(explain("sheet.comparison.name", comparison));
      explained.addAll(explain("sheet.pieces.name", pieces));
      explained.addAll(explain("sheet.cloths.name", cloths));
      explained.addAll(explain("sheet.progress.name", rows));
      explained.addAll(explain("sheet.columns.name", Explained.columns()));
      var columns = Explained.columns();
      table(workbook, "sheet.columns.name", "ColumnTable", columns, explained, pen);
      progress.at(BEFORE_ROWS);
      stream(workbook, streamed.getSheetName(), pieces, pen, out);
    }
    progress.at(1);
  }

  private List<Column<SettingRow>> comparison(XSSFWorkbook workbook, Pen pen) {
    List<Column<SettingRow>> columns = ComparisonColumns.of(facts.comparison(), words);
    List<SettingRow> rows = facts.comparison().rows();
    XSSFSheet sheet =
        table(workbook, "sheet.comparison.name", "ComparisonTable", columns, rows, pen);
    if (!rows.isEmpty()) {
      ComparisonChart.draw(sheet, columns, rows.size(), words);
    }
    return columns;
  }

  private void stream(
      XSSFWorkbook workbook,
      String sheet,
      List<Column<TestPiece>> columns,
      Pen pen,
      OutputStream out)
      throws IOException {
    int all = facts.pieces().size();
    try (SXSSFWorkbook streaming = new SXSSFWorkbook(workbook, WINDOW)) {
      streaming.setCompressTempFiles(true);
      TableRows.write(
          streaming.getSheet(sheet),
          columns,
          facts.pieces(),
          pen,
          done -> {
            if (done % TELL_EVERY == 0) {
              progress.at(BEFORE_ROWS + (AFTER_ROWS - BEFORE_ROWS) * done / all);
            }
          });
      progress.at(AFTER_ROWS);
      streaming.write(out);
    }
  }

  private <T> XSSFSheet table(
      XSSFWorkbook workbook,
      String name,
      String table,
      List<Column<T>> columns,
      List<T> rows,
      Pen pen) {
    XSSFSheet sheet = sheet(workbook, name);
    TableFrame.draw(sheet, table, columns, rows.size(), pen, words);
    TableRows.write(sheet, columns, rows, pen, done -> {});
    return sheet;
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
