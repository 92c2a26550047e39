package walebook.sheet;

import java.util.List;
import org.apache.poi.ss.usermodel.ConditionalFormattingRule;
import org.apache.poi.ss.usermodel.PatternFormatting;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import walebook.record.TestPiece;

/**
 * The conditional mark on rows that deserve a second look. Ground and ink are both set, so that it
 * can be read on light and dark; the words stand in a column of their own.
 */
final class OddMark {
  private static final byte[] GROUND = {(byte) 0xFF, (byte) 0xE8, (byte) 0xB8};
  private static final byte[] INK = {0x1F, 0x24, 0x30};

  private OddMark() {}

  static void draw(XSSFSheet sheet, List<Column<TestPiece>> columns, int rows) {
    for (int i = 0; i < columns.size(); i++) {
      if (columns.get(i).key().equals(PieceSeenColumns.ODD)) {
        mark(sheet, "$" + CellReference.convertNumToColString(i) + "2<>\"\"", columns.size(), rows);
      }
    }
  }

  private static void mark(XSSFSheet sheet, String when, int columns, int rows) {
    var rules = sheet.getSheetConditionalFormatting();
    ConditionalFormattingRule rule = rules.createConditionalFormattingRule(when);
    rule.createFontFormatting().setFontColor(new XSSFColor(INK.clone(), null));
    PatternFormatting ground = rule.createPatternFormatting();
    ground.setFillBackgroundColor(new XSSFColor(GROUND.clone(), null));
    ground.setFillPattern(PatternFormatting.SOLID_FOREGROUND);
    rules.addConditionalFormatting(
        new CellRangeAddress[] {new CellRangeAddress(1, rows, 0, columns - 1)}, rule);
  }
}
