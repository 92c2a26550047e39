package walebook.sheet;

import java.util.List;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import walebook.compare.assessed.AssessedClass;
import walebook.record.Tutor;
import walebook.words.Words;

/** What stands below a table that is signed: the count of records, the last change, the lines. */
final class SignatureLines {
  private static final float LINE_POINTS = 30;

  /** Columns that a line runs across. */
  private static final int FROM = 1;

  private static final int TO = 3;

  private final TermFacts facts;
  private final AssessedClass assessed;
  private final Words words;

  SignatureLines(TermFacts facts, AssessedClass assessed, Words words) {
    this.facts = facts;
    this.assessed = assessed;
    this.words = words;
  }

  /** Draws them below a table with so many rows. */
  void below(XSSFSheet sheet, int rows) {
    int at = rows + 2;
    text(sheet.createRow(at++), words.say(assessed.tallySays(facts.lookup().zone())));
    Tutor tutor = facts.tutor();
    String name = tutor == null ? "" : tutor.name();
    XSSFCellStyle line = sheet.getWorkbook().createCellStyle();
    line.setBorderBottom(BorderStyle.THIN);
    List<String> who =
        List.of(
            name.isEmpty()
                ? words.say("sheet.checks.sign-tutor")
                : words.say("sheet.checks.sign-tutor-named", name),
            words.say("sheet.checks.sign-assessor"),
            words.say("sheet.checks.sign-date"));
    for (String each : who) {
      Row row = sheet.createRow(at++);
      row.setHeightInPoints(LINE_POINTS);
      text(row, each);
      for (int i = FROM; i <= TO; i++) {
        row.createCell(i).setCellStyle(line);
      }
    }
  }

  private void text(Row row, String says) {
    row.createCell(0).setCellValue(CellText.escaped(CellText.clean(facts.cover().apply(says))));
  }
}
