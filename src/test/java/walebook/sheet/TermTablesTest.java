package walebook.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.zip.ZipFile;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** All tables as CSV (RFC 4180), held against the workbook of the same class. */
class TermTablesTest {
  @TempDir Path folder;

  @Test
  void eachSheetIsAFileWithTheSameHeadersAndRows() throws IOException {
    try (HarbourClass harbour = HarbourClass.in(folder.resolve("a.walebook"), 40);
        XSSFWorkbook workbook =
            Grid.open(harbour.export(folder.resolve("term.xlsx"), false).value())) {
      Path file = harbour.export(folder.resolve("term.zip"), false).value();
      Map<String, List<CSVRecord>> tables = read(file);
      assertThat(tables.keySet())
          .containsExactly(
              "term.csv",
              "comparison.csv",
              "fair.csv",
              "pieces.csv",
              "cloths.csv",
              "readings.csv",
              "washes.csv",
              "progress.csv",
              "plan.csv",
              "reading-plan.csv",
              "notes.csv",
              "columns.csv");
      for (String name : List.of("Pieces", "Readings", "Washes", "Notes", "Progress", "Plan")) {
        XSSFSheet sheet = workbook.getSheet(name);
        List<CSVRecord> rows = tables.getOrDefault(key(name), List.of());
        assertThat(rows).as(name).hasSize(sheet.getLastRowNum() + 1);
        assertThat(rows.get(0).toList()).as(name).isEqualTo(new Grid(sheet).headers());
      }
      String all = tables.toString();
      assertThat(HarbourClass.NAMES).noneMatch(all::contains);
      assertThat(all).doesNotContain(HarbourClass.TUTOR);
    }
  }

  private static String key(String sheet) {
    return sheet.toLowerCase(Locale.ROOT) + ".csv";
  }

  private static Map<String, List<CSVRecord>> read(Path file) throws IOException {
    Map<String, List<CSVRecord>> tables = new LinkedHashMap<>();
    try (ZipFile zip = new ZipFile(file.toFile())) {
      for (var entries = zip.entries(); entries.hasMoreElements(); ) {
        var entry = entries.nextElement();
        String text = new String(zip.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8);
        try (CSVParser parser = CSVFormat.RFC4180.parse(new StringReader(text))) {
          tables.put(entry.getName(), parser.getRecords());
        }
      }
    }
    return tables;
  }
}
