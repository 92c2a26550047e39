package walebook.sheet.in;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Workbooks made in code for tests, and their parts taken apart and put together again. */
public final class MadeWorkbook {
  private MadeWorkbook() {}

  /** A workbook with one sheet of rows: words, numbers, days, nothing. */
  public static byte[] of(String sheet, Object[]... rows) {
    return with(
        workbook -> {
          XSSFSheet into = workbook.createSheet(sheet);
          for (int i = 0; i < rows.length; i++) {
            row(workbook, into.createRow(i), rows[i]);
          }
        });
  }

  /** A workbook as its maker leaves it. */
  public static byte[] with(Consumer<XSSFWorkbook> make) {
    try (XSSFWorkbook workbook = new XSSFWorkbook();
        ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      make.accept(workbook);
      workbook.write(out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void row(XSSFWorkbook workbook, Row row, Object[] values) {
    CellStyle day = null;
    for (int i = 0; i < values.length; i++) {
      Object value = values[i];
      if (value instanceof Number number) {
        row.createCell(i).setCellValue(number.doubleValue());
      } else if (value instanceof LocalDate date) {
        if (day == null) {
          day = workbook.createCellStyle();
          day.setDataFormat(workbook.createDataFormat().getFormat("dd.mm.yyyy"));
        }
        row.createCell(i).setCellValue(date);
        row.getCell(i).setCellStyle(day);
      } else if (!value.equals("")) {
        row.createCell(i).setCellValue(value.toString());
      }
    }
  }

  /** The parts of a packed file by name. */
  public static Map<String, byte[]> parts(byte[] packed) {
    Map<String, byte[]> parts = new LinkedHashMap<>();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(packed))) {
      for (ZipEntry each = in.getNextEntry(); each != null; each = in.getNextEntry()) {
        parts.put(each.getName(), in.readAllBytes());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return parts;
  }

  public static byte[] packed(Map<String, byte[]> parts) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      for (Map.Entry<String, byte[]> each : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(each.getKey()));
        zip.write(each.getValue());
        zip.closeEntry();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  public static Path file(Path folder, String name, byte[] bytes) {
    try {
      return Files.write(folder.resolve(name), bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
