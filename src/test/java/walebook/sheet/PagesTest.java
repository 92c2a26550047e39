package walebook.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.book.DemoBook;
import walebook.act.classroom.ExportTerm;
import walebook.book.Book;
import walebook.book.Classroom;

/** What the demo class's workbook is like on paper. */
class PagesTest {
  /** Sheets that are handed round or read at one look. */
  private static final List<String> ONE_PAGE_WIDE =
      List.of(
          "Comparison",
          "Fair comparison",
          "Cloths",
          "Readings",
          "Washes",
          "Progress",
          "Plan",
          "Planned readings",
          "Kit",
          "Garments",
          "Notes",
          "Marks",
          "Criteria coverage",
          "Columns");

  /** What A4 across holds between its margins, in characters of 7 points. */
  private static final int READABLE = 230;

  /** Less where a table goes over several pages, since pages end between columns. */
  private static final int SEVERAL = 180;

  @Test
  void theMarkSheetAndItsLikeAreOnePageWideWithTheirHeaderOnEachPage(@TempDir Path folder)
      throws IOException {
    Path file = folder.resolve("term.xlsx");
    try (Book demo = DemoBook.open(folder.resolve("demo.walebook"))) {
      new ExportTerm(demo, HarbourClass.WORDS, HarbourClass.TABLES, Classroom.CLOCK)
          .export(
              file,
              demo.classes().all().get(0).id(),
              TermChoice.CODES.withNames(true),
              false,
              ExportProgress.UNHEARD)
          .value();
    }
    try (XSSFWorkbook workbook = Grid.open(file)) {
      for (String each : ONE_PAGE_WIDE) {
        XSSFSheet sheet = workbook.getSheet(each);
        assertThat(sheet.getPrintSetup().getFitWidth()).as(each).isEqualTo((short) 1);
        assertThat(sheet.getPrintSetup().getLandscape()).as(each).isTrue();
        assertThat(sheet.getRepeatingRows().formatAsString()).as(each).isEqualTo("1:1");
        Row header = sheet.getRow(0);
        int width = 0;
        for (int i = 0; i < header.getLastCellNum(); i++) {
          width += sheet.getColumnWidth(i) / 256;
        }
        assertThat(width).as(each).isLessThanOrEqualTo(READABLE);
      }
      pieces(workbook.getSheet("Pieces"));
      assertThat(workbook.getSheet("Marks").getRow(0).getCell(5).getCellStyle().getRotation())
          .isEqualTo((short) 90);
    }
  }

  /** Too wide for one page: each has the header above and code and student at the left. */
  private static void pieces(XSSFSheet sheet) {
    assertThat(sheet.getPrintSetup().getPaperSize()).isEqualTo(PrintSetup.A4_PAPERSIZE);
    assertThat(sheet.getPrintSetup().getLandscape()).isTrue();
    assertThat(sheet.getRepeatingRows().formatAsString()).isEqualTo("1:1");
    assertThat(sheet.getRepeatingColumns().formatAsString()).isEqualTo("A:B");
    assertThat(new Grid(sheet).headers().subList(0, 2)).containsExactly("Piece", "Student");
    // Pages that belong side by side come one after the other.
    assertThat(sheet.getPrintSetup().getLeftToRight()).isTrue();
    assertThat(sheet.getPrintSetup().getFitHeight()).isZero();
    int left = (sheet.getColumnWidth(0) + sheet.getColumnWidth(1)) / 256;
    int columns = sheet.getRow(0).getLastCellNum();
    int width = IntStream.range(0, columns).map(i -> sheet.getColumnWidth(i) / 256).sum();
    int pages = sheet.getPrintSetup().getFitWidth();
    assertThat(left + (width - left) / pages).isLessThanOrEqualTo(SEVERAL);
  }
}
