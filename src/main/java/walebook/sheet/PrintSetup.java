package walebook.sheet;

import org.apache.poi.ss.usermodel.Footer;
import org.apache.poi.ss.usermodel.PaperSize;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** How a sheet goes to paper: landscape A4, header row on each page, as wide as can be read. */
final class PrintSetup {
  /** Characters that can still be read across a landscape page. */
  private static final int READABLE = 250;

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

  /** Any sheet, so many pages wide and as long as it takes. */
  static void page(XSSFSheet sheet, int pagesWide) {
    sheet.setFitToPage(true);
    sheet.getPrintSetup().setLandscape(true);
    sheet.getPrintSetup().setPaperSize(PaperSize.A4_PAPER);
    sheet.getPrintSetup().setFitWidth((short) pagesWide);
    sheet.getPrintSetup().setFitHeight((short) 0);
    Footer footer = sheet.getFooter();
    footer.setLeft("&A");
    footer.setRight("&P / &N");
  }
}
