package walebook.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A written workbook read back, its cells found by their headers. */
record Grid(XSSFSheet sheet) {

  static XSSFWorkbook open(Path file) {
    try {
      return new XSSFWorkbook(file.toFile().getAbsolutePath());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  int column(String header) {
    for (Cell each : sheet.getRow(0)) {
      if (each.getStringCellValue().equals(header)) {
        return each.getColumnIndex();
      }
    }
    throw new AssertionError("no column " + header + " among " + headers());
  }

  List<String> headers() {
    List<String> headers = new ArrayList<>();
    sheet.getRow(0).forEach(each -> headers.add(each.getStringCellValue()));
    return headers;
  }

  Cell cell(int row, String header) {
    return sheet.getRow(row).getCell(column(header), Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
  }

  double number(int row, String header) {
    return cell(row, header).getNumericCellValue();
  }

  String text(int row, String header) {
    return cell(row, header).getStringCellValue();
  }

  /** A cell as another library reads it is the same as ours. */
  static void same(XSSFSheet sheet, org.dhatim.fastexcel.reader.Cell cell) {
    var there = sheet.getRow(cell.getAddress().getRow()).getCell(cell.getAddress().getColumn());
    switch (cell.getType()) {
      case NUMBER ->
          assertThat(cell.asNumber().doubleValue()).isEqualTo(there.getNumericCellValue());
      case STRING -> assertThat(cell.asString()).isEqualTo(there.getStringCellValue());
      case EMPTY -> assertThat(there == null || there.toString().isEmpty()).isTrue();
      default -> throw new AssertionError("unexpected cell " + cell);
    }
  }
}
