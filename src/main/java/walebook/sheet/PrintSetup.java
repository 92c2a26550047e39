package walebook.sheet;

import java.util.List;
import org.apache.poi.ss.usermodel.Footer;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PaperSize;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** How a sheet goes to paper: landscape A4, header row on each page, as wide as can be read. */
final class PrintSetup {
  /** Characters that can still be read across a landscape page. */
  private static final int READABLE = 230;

  /** Across each of several pages: breaks between columns leave some of a page empty. */
  private static final int OF_SEVERAL = 180;

  private static final double MARGIN_INCHES = 0.45;

  private PrintSetup() {}

  /**
   * A table: one page wide, or several where one could not be read; then the first columns stand at
   * the left of each, and pages that belong side by side come one after the other.
   *
   * @param heads how many of the first columns tell what a row is about
   */
  static void of(XSSFSheet sheet, int columns, int heads) {
    int across = width(sheet, 0, columns);
    if (across <= READABLE) {
      page(sheet, 1);
    } else {
      int left = width(sheet, 0, heads);
      int room = OF_SEVERAL - left;
      page(sheet, (across - left + room - 1) / room);
      sheet.setRepeatingColumns(new CellRangeAddress(-1, -1, 0, heads - 1));
      sheet.getPrintSetup().setLeftToRight(true);
    }
    sheet.setRepeatingRows(new CellRangeAddress(0, 0, -1, -1));
  }

  /** Of some columns, in characters. */
  private static int width(XSSFSheet sheet, int first, int end) {
    int characters = 0;
    for (int i = first; i < end; i++) {
      characters += sheet.getColumnWidth(i) / 256;
    }
    return characters;
  }

  /** A sheet that is read at one look: all of it on one upright page. */
  static void onePage(XSSFSheet sheet) {
    page(sheet, 1);
    sheet.getPrintSetup().setLandscape(false);
    sheet.getPrintSetup().setFitHeight((short) 1);
  }

  /** So many columns and rows of a sheet in their own size, with page breaks where they are set. */
  static void asLarge(XSSFSheet sheet, int columns, int rows) {
    page(sheet, 1);
    sheet.setFitToPage(false);
    XSSFWorkbook workbook = sheet.getWorkbook();
    workbook.setPrintArea(workbook.getSheetIndex(sheet), 0, columns - 1, 0, rows - 1);
  }

  /** Any sheet, so many pages wide and as long as it takes. */
  static void page(XSSFSheet sheet, int pagesWide) {
    sheet.setFitToPage(true);
    sheet.getPrintSetup().setLandscape(true);
    sheet.getPrintSetup().setPaperSize(PaperSize.A4_PAPER);
    sheet.getPrintSetup().setFitWidth((short) pagesWide);
    sheet.getPrintSetup().setFitHeight((short) 0);
    for (PageMargin side : List.of(PageMargin.LEFT, PageMargin.RIGHT, PageMargin.TOP)) {
      sheet.setMargin(side, MARGIN_INCHES);
    }
    Footer footer = sheet.getFooter();
    footer.setLeft("&A");
    footer.setRight("&P / &N");
  }
}
