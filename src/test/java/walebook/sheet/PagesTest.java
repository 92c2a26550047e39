package walebook.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.book.MakeDemoBook;
import walebook.act.classroom.ExportTerm;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.book.open.SqliteFiles;

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

  @Test
  void theMarkSheetAndItsLikeAreOnePageWideWithTheirHeaderOnEachPage(@TempDir Path folder)
      throws IOException {
    Path file = folder.resolve("term.xlsx");
    try (Book demo =
        new MakeDemoBook(new SqliteFiles(), Classroom.CLOCK)
            .make(folder.resolve("demo.walebook"), MakeDemoBook.SEED)
            .value()) {
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
      assertThat(workbook.getSheet("Marks").getRow(0).getCell(5).getCellStyle().getRotation())
          .isEqualTo((short) 90);
    }
  }
}
