package walebook.sheet;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.function.UnaryOperator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A workbook with one sheet: titles and rows of values, streamed. */
public final class PlainTable {
  private static final int WINDOW = 100;
  private static final int CHARACTERS = 18;

  private PlainTable() {}

  /** Writes it; the stream stays open. */
  public static void write(
      OutputStream out, String sheet, List<String> titles, List<List<Value>> rows)
      throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      Pen pen = new Pen(new Styles(workbook), UnaryOperator.identity());
      try (SXSSFWorkbook streaming = new SXSSFWorkbook(workbook, WINDOW)) {
        SXSSFSheet into = streaming.createSheet(sheet);
        into.createFreezePane(0, 1);
        Row header = into.createRow(0);
        for (int i = 0; i < titles.size(); i++) {
          String title = titles.get(i);
          pen.own(header, i, pen.styles().header(CellText.looksLikeFormula(title)), title);
          into.setColumnWidth(i, 256 * CHARACTERS);
        }
        int at = 1;
        for (List<Value> values : rows) {
          Row row = into.createRow(at++);
          for (int i = 0; i < values.size(); i++) {
            Value value = values.get(i);
            pen.write(row, i, value instanceof Value.Day ? Format.DAY : Format.WORD, value);
          }
        }
        streaming.write(out);
      }
    }
  }
}
