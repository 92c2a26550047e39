package walebook.sheet;

import java.io.IOException;
import java.io.OutputStream;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A workbook of which one sheet's rows go straight into the file while it is written. */
final class StreamedSheet extends SXSSFWorkbook {
  private final String sheet;
  private final Rows rows;

  /** Writes the markup of all rows below the header. */
  @FunctionalInterface
  interface Rows {
    void to(OutputStream out) throws IOException;
  }

  /**
   * Sets it up.
   *
   * @param workbook all else
   * @param sheet the name of the one whose rows are streamed
   */
  StreamedSheet(XSSFWorkbook workbook, String sheet, Rows rows) {
    super(workbook);
    this.sheet = sheet;
    this.rows = rows;
  }

  @Override
  protected ISheetInjector createSheetInjector(SXSSFSheet of) throws IOException {
    return of.getSheetName().equals(sheet) ? rows::to : super.createSheetInjector(of);
  }
}
