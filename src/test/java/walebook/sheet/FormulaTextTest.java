package walebook.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.TreeSet;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Words that look like a formula are words wherever people can type any. */
class FormulaTextTest {
  private static final String[] COLUMNS = {
    "Cloths/Cloth",
    "Cloths/Fibre",
    "Cloths/Kind",
    "Cloths/Remark",
    "Pieces/Cloth",
    "Pieces/Hem method",
    "Pieces/Lesson",
    "Pieces/Measured by",
    "Pieces/Pressure dial",
    "Pieces/Remark",
    "Pieces/Stabiliser",
    "Pieces/Stitch",
    "Pieces/Student",
    "Pieces/Tension dial",
    "Pieces/Thread",
    "Pieces/What was changed",
    "Progress/Student"
  };

  @ParameterizedTest
  @ValueSource(
      strings = {
        "=1+1",
        "+x",
        "-x",
        "@x",
        "\t=x",
        "=HYPERLINK(\"a\")",
        "_x0041_ is no sign",
        "two\nlines"
      })
  void itComesBackAsItWasTyped(String text, @TempDir Path folder) throws IOException {
    try (HarbourClass harbour = HarbourClass.saying(folder.resolve("class.walebook"), text)) {
      Path file = harbour.export(folder.resolve("term.xlsx"), true).value();
      TreeSet<String> found = new TreeSet<>();
      try (XSSFWorkbook workbook = Grid.open(file)) {
        for (Sheet sheet : workbook) {
          for (Row row : sheet) {
            for (Cell cell : row) {
              assertThat(cell.getCellType()).isNotEqualTo(CellType.FORMULA);
              if (row.getRowNum() > 0
                  && cell.getCellType() == CellType.STRING
                  && cell.getStringCellValue().equals(text)) {
                assertThat(cell.getCellStyle().getQuotePrefixed())
                    .isEqualTo(CellText.looksLikeFormula(text));
                found.add(sheet.getSheetName() + "/" + header(sheet, cell));
              }
            }
          }
        }
      }
      assertThat(found).contains(COLUMNS);
      assertThat(found).contains("Term/Term record");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+x", "-x", "@x", "\t=x"})
  void theOtherReaderFindsNoFormulaEither(String text, @TempDir Path folder) throws IOException {
    try (HarbourClass harbour = HarbourClass.saying(folder.resolve("class.walebook"), text)) {
      Path file = harbour.export(folder.resolve("term.xlsx"), false).value();
      try (ReadableWorkbook read = new ReadableWorkbook(file.toFile())) {
        for (var sheet : read.getSheets().toList()) {
          for (var row : sheet.read()) {
            row.stream()
                .filter(cell -> cell != null)
                .forEach(cell -> assertThat(cell.getFormula()).isNull());
          }
        }
      }
    }
  }

  private static String header(Sheet sheet, Cell cell) {
    int column = sheet.getSheetName().equals("Term") ? 0 : cell.getColumnIndex();
    return sheet.getRow(0).getCell(column).getStringCellValue();
  }
}
