package walebook.sheet;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** A table that is signed on paper: each row whole on one page across, its words wrapped. */
final class WrappedTable {
  private static final short UPRIGHT = 90;
  private static final float HEADER_POINTS = 150;

  /** Two lines of an upright header beside each other. */
  private static final int MARK_WIDTH = 6;

  /** What a cell keeps free at its sides, in characters. */
  static final int SIDES = 2;

  private static final Map<String, Integer> MARKS =
      Map.of(
          "student", 20,
          "code", 10,
          "sewn-on", 11,
          "lesson", 28,
          "criteria", 14,
          "standing", 16,
          "self-help", 11,
          "tutor-help", 11,
          "self-on", 11,
          "tutor-on", 11);

  private WrappedTable() {}

  /** Narrows the table of marks: headers of marks stand upright over their figures. */
  static <T> void marks(XSSFSheet sheet, List<Column<T>> columns, int rows) {
    Row header = sheet.getRow(0);
    header.setHeightInPoints(HEADER_POINTS);
    Map<CellStyle, CellStyle> upright = new HashMap<>();
    for (int i = 0; i < columns.size(); i++) {
      Integer width = MARKS.get(columns.get(i).key());
      sheet.setColumnWidth(i, 256 * (width == null ? MARK_WIDTH : width));
      if (width == null) {
        Cell cell = header.getCell(i);
        cell.setCellStyle(upright.computeIfAbsent(cell.getCellStyle(), of -> upright(sheet, of)));
      }
    }
    PrintSetup.of(sheet, columns.size(), 1);
    words(sheet, columns, rows);
  }

  private static CellStyle upright(XSSFSheet sheet, CellStyle of) {
    CellStyle style = sheet.getWorkbook().createCellStyle();
    style.cloneStyleFrom(of);
    style.setRotation(UPRIGHT);
    // The filter's mark sits at the foot of the cell.
    style.setVerticalAlignment(VerticalAlignment.TOP);
    return style;
  }

  /** Wraps the words of all rows, each row as high as they need. */
  static <T> void words(XSSFSheet sheet, List<Column<T>> columns, int rows) {
    Map<CellStyle, CellStyle> wrapped = new HashMap<>();
    for (int at = 1; at <= rows; at++) {
      Row row = sheet.getRow(at);
      int lines = 1;
      for (int i = 0; i < columns.size(); i++) {
        Cell cell = row.getCell(i);
        if (columns.get(i).isWords() && cell != null && cell.getCellType() == CellType.STRING) {
          cell.setCellStyle(
              wrapped.computeIfAbsent(
                  cell.getCellStyle(),
                  of -> {
                    CellStyle style = sheet.getWorkbook().createCellStyle();
                    style.cloneStyleFrom(of);
                    style.setWrapText(true);
                    return style;
                  }));
          int across = sheet.getColumnWidth(i) / 256 - SIDES;
          lines = Math.max(lines, lines(cell.getStringCellValue(), across));
        }
      }
      row.setHeightInPoints(TableRows.LINE_POINTS * lines);
    }
  }

  /** Lines of words broken between them, and within one only where it is longer than a line. */
  static int lines(String words, int across) {
    int lines = 1;
    int used = 0;
    for (String word : words.split("\\s+")) {
      if (used > 0 && used + 1 + word.length() > across) {
        lines++;
        used = 0;
      }
      used += word.length() + (used == 0 ? 0 : 1);
      while (used > across) {
        lines++;
        used -= across;
      }
    }
    return lines;
  }
}
