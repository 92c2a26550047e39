package walebook.sheet;

import java.util.List;
import org.apache.poi.ss.usermodel.ConditionalFormattingRule;
import org.apache.poi.ss.usermodel.PatternFormatting;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import walebook.compare.assessed.AssessedClass;
import walebook.compare.assessed.AssessedPiece;
import walebook.words.Words;

/** The tables for an assessor: marks piece by piece, and what is covered by whom. */
final class AssessedParts {
  /** Ground and ink are both set, so that a marked row can be read on light and dark. */
  private static final byte[] GROUND = {(byte) 0xFF, (byte) 0xE8, (byte) 0xB8};

  private static final byte[] INK = {0x1F, 0x24, 0x30};

  private AssessedParts() {}

  static List<SheetPart<?>> of(TermFacts facts, Words words) {
    AssessedClass assessed = facts.assessed();
    SignatureLines signatures = new SignatureLines(facts, assessed, words);
    SheetPart<AssessedPiece> marks =
        SheetPart.of(
                "sheet.checks.name",
                "sheet.term.about-marks",
                "MarkTable",
                MarkColumns.of(facts.lookup(), assessed, words),
                assessed.pieces())
            .with(
                (sheet, columns, rows) -> {
                  WrappedTable.marks(sheet, columns, rows);
                  signatures.below(sheet, rows);
                });
    SheetPart<CoverageLine> coverage =
        SheetPart.of(
                "sheet.coverage.name",
                "sheet.term.about-coverage",
                "CoverageTable",
                CoverageColumns.of(facts, words),
                CoverageLine.all(facts.coverage(), facts.names()))
            .with(
                (sheet, columns, rows) -> {
                  WrappedTable.words(sheet, columns, rows);
                  missing(sheet, columns, rows, words);
                  signatures.below(sheet, rows);
                });
    return List.of(marks, coverage);
  }

  /** Marks the rows where something is missing; the word stands in a column of its own. */
  private static void missing(
      XSSFSheet sheet, List<Column<CoverageLine>> columns, int rows, Words words) {
    for (int i = 0; i < columns.size(); i++) {
      if (columns.get(i).key().equals(CoverageColumns.COVERED)) {
        String column = CellReference.convertNumToColString(i);
        String when = "$" + column + "2=\"" + words.say("sheet.coverage.missing") + "\"";
        var rules = sheet.getSheetConditionalFormatting();
        ConditionalFormattingRule rule = rules.createConditionalFormattingRule(when);
        rule.createFontFormatting().setFontColor(new XSSFColor(INK.clone(), null));
        PatternFormatting ground = rule.createPatternFormatting();
        ground.setFillBackgroundColor(new XSSFColor(GROUND.clone(), null));
        ground.setFillPattern(PatternFormatting.SOLID_FOREGROUND);
        rules.addConditionalFormatting(
            new CellRangeAddress[] {new CellRangeAddress(1, rows, 0, columns.size() - 1)}, rule);
      }
    }
  }
}
