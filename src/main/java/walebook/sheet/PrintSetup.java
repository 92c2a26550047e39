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

  private static final double MARGIN_INCHES = 0.45;

  private PrintSetup() {}

  /** A table of so many columns: one page wide, or several where one could not be read. */
  static void of(XSSFSheet sheet, int columns) {
    int characters = 0;
    for (int i = 0; i < columns; i++) {
      characters += sheet.getColumnWidth(i) / 256;
    }
    int pages = Math.max(1, (characters + READABLE - 1) / READABLE);
    page(sheet, pages);
    sheet.setRepeatingRows(new CellRangeAddress(0, 0, -1, -1));
    if (pages > 1) {
      sheet.setRepeatingColumns(new CellRangeAddress(-1, -1, 0, 0));
    }
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
