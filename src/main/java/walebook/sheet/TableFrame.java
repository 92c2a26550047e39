package walebook.sheet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import walebook.words.Words;

/** What surrounds the rows of a table: header, filter, frozen panes, widths and print set-up. */
final class TableFrame {
  /** ECMA-376 leaves a table column's name 255 signs. */
  private static final int LONGEST_HEADER = 250;

  /** One line of bold letters, and the least that a header has. */
  private static final float LINE_POINTS = 15.6f;

  private static final int FEWEST_LINES = 5;

  /** What the filter's mark takes of a header's width, in characters. */
  private static final int FILTER_MARK = 3;

  /** What a line of bold letters written upwards takes of a column's width, in characters. */
  private static final int UPRIGHT_LINE = 3;

  private TableFrame() {}

  /**
   * Draws the frame.
   *
   * @param table the table's name, unique in the workbook
   * @param rows how many rows will follow the header
   */
  static <T> void draw(
      XSSFSheet sheet, String table, List<Column<T>> columns, int rows, Pen pen, Words words) {
    List<String> titles = titles(columns, words);
    Row header = sheet.createRow(0);
    int lines = FEWEST_LINES;
    for (int i = 0; i < columns.size(); i++) {
      String title = titles.get(i);
      Column<T> column = columns.get(i);
      Format format = column.format();
      pen.own(header, i, pen.styles().header(format, CellText.looksLikeFormula(title)), title);
      int width = width(column, title);
      sheet.setColumnWidth(i, 256 * width);
      lines =
          Math.max(
              lines,
              format.isUpright() ? upright(title, width) : lines(title, width - FILTER_MARK));
    }
    header.setHeightInPoints(LINE_POINTS * lines);
    sheet.createFreezePane(1, 1);
    int last = Math.max(1, rows);
    filter(sheet, table, last, columns.size() - 1);
    PrintSetup.of(sheet, columns.size(), heads(columns));
  }

  /**
   * The first column tells what a row is; of a piece whose it is, too, where that stands beside.
   */
  private static <T> int heads(List<Column<T>> columns) {
    boolean whose =
        columns.size() > 1
            && columns.get(0).key().equals(TermChoice.CODE_COLUMN)
            && columns.get(1).key().equals(PieceWhoseColumns.STUDENT);
    return whose ? 2 : 1;
  }

  /** A table with one empty row at least: programs take one without any for damaged. */
  private static void filter(XSSFSheet sheet, String name, int lastRow, int lastColumn) {
    AreaReference area =
        new AreaReference(
            new CellReference(0, 0),
            new CellReference(lastRow, lastColumn),
            SpreadsheetVersion.EXCEL2007);
    XSSFTable table = sheet.createTable(area);
    table.setName(name);
    table.setDisplayName(name);
    table
        .getCTTable()
        .addNewAutoFilter()
        .setRef(new CellRangeAddress(0, lastRow, 0, lastColumn).formatAsString());
    var style = table.getCTTable().addNewTableStyleInfo();
    style.setName("TableStyleLight1");
    style.setShowRowStripes(true);
    style.setShowColumnStripes(false);
  }

  /** Headers, each different from all others as a table wants it, whatever lessons are called. */
  private static <T> List<String> titles(List<Column<T>> columns, Words words) {
    Set<String> taken = new HashSet<>();
    List<String> titles = new ArrayList<>();
    for (Column<T> column : columns) {
      String plain = CellText.clean(column.title(words)).replaceAll("\\s+", " ").strip();
      String cut = plain.length() > LONGEST_HEADER ? plain.substring(0, LONGEST_HEADER) : plain;
      String title = cut;
      for (int nth = 2; !taken.add(title.toLowerCase(Locale.ROOT)); nth++) {
        title = cut + " " + nth;
      }
      titles.add(title);
    }
    return titles;
  }

  /** How many lines words take that are broken between them. */
  private static int lines(String title, int width) {
    int lines = 1;
    int used = 0;
    for (String word : title.split(" ")) {
      if (used > 0 && used + 1 + word.length() > width) {
        lines++;
        used = 0;
      }
      used += word.length() + (used == 0 ? 0 : 1);
    }
    return lines;
  }

  /** How many lines high a header is that is written upwards, in as many lines as have room. */
  private static int upright(String title, int width) {
    int beside = Math.max(1, width / UPRIGHT_LINE);
    int length = 1;
    while (lines(title, length) > beside || longest(title) > length) {
      length++;
    }
    return (length + FILTER_MARK) / 2;
  }

  /** Wide enough for the usual value and for the header's longest word beside the filter's mark. */
  private static int width(Column<?> column, String title) {
    return column.format().isUpright()
        ? column.width()
        : Math.max(column.width(), Math.min(24, longest(title) + 4));
  }

  private static int longest(String title) {
    int longest = 0;
    for (String word : title.split(" ")) {
      longest = Math.max(longest, word.length());
    }
    return longest;
  }
}
