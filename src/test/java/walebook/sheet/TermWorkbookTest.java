package walebook.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import walebook.compare.ClothStretch;
import walebook.record.ClothReading;
import walebook.record.PieceCode;
import walebook.record.PullReading;
import walebook.record.SeamEnd;
import walebook.record.TestPiece;
import walebook.statistics.Interval;
import walebook.statistics.Proportion;

/**
 * A class of 300 pieces written and read back by the library that wrote it and by one that shares
 * no code with it.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class TermWorkbookTest {
  /** The sheets of rows, in their order. */
  private static final List<String> TABLES =
      List.of(
          "Comparison",
          "Fair comparison",
          "Pieces",
          "Cloths",
          "Readings",
          "Washes",
          "Progress",
          "Plan",
          "Planned readings",
          "Notes",
          "Columns");

  private HarbourClass harbour;
  private XSSFWorkbook workbook;
  private Path file;

  @BeforeAll
  void write(@TempDir Path folder) throws IOException {
    harbour = HarbourClass.in(folder.resolve("class.walebook"), 300);
    file = harbour.export(folder.resolve("term.xlsx"), true).value();
    try (var in = java.nio.file.Files.newInputStream(file)) {
      workbook = new XSSFWorkbook(in);
    }
  }

  @AfterAll
  void close() throws IOException {
    workbook.close();
    harbour.close();
  }

  @Test
  void sheetsStandInOrder() {
    List<String> names =
        Stream.iterate(0, i -> i + 1)
            .limit(workbook.getNumberOfSheets())
            .map(workbook::getSheetName)
            .toList();
    assertThat(names).startsWith("Term", "Charts");
    assertThat(names.subList(2, names.size())).isEqualTo(TABLES);
  }

  @Test
  void everyPieceIsThereWithItsNumbersAndDates() {
    Grid pieces = grid("Pieces");
    Map<String, Integer> rows = new HashMap<>();
    for (int i = 1; i <= pieces.sheet().getLastRowNum(); i++) {
      rows.put(pieces.text(i, "Piece"), i);
    }
    assertThat(rows).hasSize(300);
    for (TestPiece each : harbour.pieces) {
      int row = Objects.requireNonNull(rows.get(PieceCode.spoken(each.code())));
      PullReading pull = each.measure().pulls().get(0);
      boolean held = pull.end() == SeamEnd.HELD;
      assertThat(pieces.text(row, "Gave or held")).isEqualTo(held ? "held" : "gave");
      assertThat(pieces.text(row, "Lower bound")).isEqualTo(held ? "yes" : "no");
      assertThat(pieces.number(row, "Length at the end (mm)")).isEqualTo(pull.endMm());
      // 100 (L - 100) / 100 is L - 100 by hand.
      assertThat(pieces.number(row, "Seam stretch (%)"))
          .isCloseTo(pull.endMm() - 100, within(1e-9));
      assertThat(pieces.number(row, "Width dial")).isEqualTo(each.setting().dialWidth());
      assertThat(pieces.number(row, "Needle size Nm")).isEqualTo(75);
      assertThat(pieces.cell(row, "Stitch type (ISO 4915)").getCellType())
          .isEqualTo(CellType.STRING);
      assertThat(DateUtil.isCellDateFormatted(pieces.cell(row, "Sewn on"))).isTrue();
      assertThat(pieces.cell(row, "Sewn on").getLocalDateTimeCellValue().toLocalDate())
          .isEqualTo(each.whose().sewnOn());
    }
  }

  @Test
  void theOtherReaderFindsTheSameCells() throws IOException {
    try (ReadableWorkbook read = new ReadableWorkbook(file.toFile())) {
      for (var sheet : read.getSheets().toList()) {
        XSSFSheet same = workbook.getSheet(sheet.getName());
        List<Row> rows = sheet.read();
        assertThat(rows).isNotEmpty();
        for (Row row : rows) {
          row.stream().filter(cell -> cell != null).forEach(cell -> Grid.same(same, cell));
        }
      }
    }
  }

  @Test
  void theStreamedSheetSaysHowManyRowsItHas() throws IOException {
    int columns = grid("Pieces").headers().size();
    String last = org.apache.poi.ss.util.CellReference.convertNumToColString(columns - 1) + "301";
    String sheet = workbook.getSheet("Pieces").getPackagePart().getPartName().getName();
    assertThat(Parts.of(file).get(sheet.substring(1)))
        .contains("<dimension ref=\"A1:" + last + "\"/>");
  }

  @Test
  void intervalsAreWilsons() {
    Grid rows = grid("Comparison");
    int checked = 0;
    for (int i = 1; i <= rows.sheet().getLastRowNum(); i++) {
      int held = (int) rows.number(i, "Held");
      int pulled = held + (int) rows.number(i, "Gave");
      Interval wilson = new Proportion(held, pulled).wilson(0.95);
      assertThat(rows.number(i, "Share held, low end (%)")).isEqualTo(100 * wilson.low());
      assertThat(rows.number(i, "Share held, high end (%)")).isEqualTo(100 * wilson.high());
      double share = rows.number(i, "Share held (%)");
      assertThat(share).isCloseTo(100.0 * held / pulled, within(1e-9));
      assertThat(share + rows.number(i, "Interval up (points)"))
          .isCloseTo(100 * wilson.high(), within(1e-9));
      checked++;
    }
    assertThat(checked).isEqualTo(harbour.facts(true).comparison().rows().size()).isGreaterThan(8);
  }

  @Test
  void theChartsDrawEverySettingOfTheComparisonClothByCloth() {
    XSSFSheet sheet = workbook.getSheet("Comparison");
    Grid rows = new Grid(sheet);
    List<String> charts = charts();
    int last = sheet.getLastRowNum();
    int at = 1;
    int chart = 0;
    while (at <= last) {
      String cloth = rows.cell(at, "Cloth").getStringCellValue();
      int end = at;
      while (end < last && rows.cell(end + 1, "Cloth").getStringCellValue().equals(cloth)) {
        end++;
      }
      String xml = charts.get(chart++);
      for (String header :
          List.of("Setting", "Share held (%)", "Interval down (points)", "Interval up (points)")) {
        String column =
            org.apache.poi.ss.util.CellReference.convertNumToColString(rows.column(header));
        assertThat(xml)
            .contains("Comparison!$" + column + "$" + (at + 1) + ":$" + column + "$" + (end + 1));
      }
      assertThat(xml).contains(cloth + ": share").contains("errBars").contains("solidFill");
      at = end + 1;
    }
    assertThat(chart).isEqualTo(2);
    assertThat(workbook.getSheetIndex("Charts")).isEqualTo(1);
    assertThat(workbook.getSheet("Charts").getRowBreaks()).hasSize(charts.size());
  }

  private List<String> charts() {
    return workbook.getSheet("Charts").getDrawingPatriarch().getCharts().stream()
        .sorted(Comparator.comparingInt(TermWorkbookTest::number))
        .map(each -> each.getCTChart().xmlText())
        .toList();
  }

  /** As they were drawn: the library lists chart10 before chart2. */
  private static int number(XSSFChart chart) {
    return Integer.parseInt(chart.getPackagePart().getPartName().getName().replaceAll("\\D", ""));
  }

  @Test
  void eachOutcomeHasItsChartsOfTheFairComparisonOneForEachCloth() {
    XSSFSheet sheet = workbook.getSheet("Fair comparison");
    Grid rows = new Grid(sheet);
    var found = harbour.facts(true).findings().fair();
    assertThat(found).hasSizeGreaterThan(2);
    List<String> charts = charts();
    assertThat(charts).hasSize(2 + 2 * found.size());
    int at = 1;
    for (int i = 0; i < 2 * found.size(); i++) {
      String xml = charts.get(2 + i);
      String cloth = rows.text(at, "Setting").split(" · ", -1)[0];
      int last = at;
      while (last < sheet.getLastRowNum()
          && rows.text(last + 1, "Outcome").equals(rows.text(at, "Outcome"))
          && rows.text(last + 1, "Setting").startsWith(cloth)) {
        last++;
      }
      String column =
          org.apache.poi.ss.util.CellReference.convertNumToColString(rows.column("Middle"));
      assertThat(xml)
          .contains("'Fair comparison'!$" + column + "$" + (at + 1) + ":$" + column)
          .contains("$" + (last + 1) + "</")
          .contains("errBars")
          .contains(cloth + ", fair comparison")
          .contains(
              switch (found.get(i / 2).question().outcome()) {
                case HELD -> "Share held (%)";
                case SEAM_SHARE -> "cloth’s stretch (%)";
                case SEAM_STRETCH -> "stretch (%)";
                case EDGE_CHANGE -> "edge change (%)";
                case GRADE -> "look (grades)";
                case TIME -> "time to sew (min)";
              });
      at = last + 1;
    }
    assertThat(sheet.getLastRowNum()).isEqualTo(at - 1);
    for (int i = 1; i < at; i++) {
      if (rows.cell(i, "Low end").getCellType() == CellType.NUMERIC) {
        assertThat(rows.number(i, "Middle") - rows.number(i, "Bar down"))
            .isCloseTo(rows.number(i, "Low end"), within(1e-9));
      }
    }
  }

  @Test
  void rowsWithAnOddValueAreMarkedByACondition() {
    XSSFSheet sheet = workbook.getSheet("Pieces");
    var rules = sheet.getSheetConditionalFormatting();
    assertThat(rules.getNumConditionalFormattings()).isEqualTo(1);
    var rule = rules.getConditionalFormattingAt(0);
    Grid pieces = new Grid(sheet);
    String column =
        org.apache.poi.ss.util.CellReference.convertNumToColString(pieces.column("Odd"));
    assertThat(rule.getRule(0).getFormula1()).isEqualTo("$" + column + "2<>\"\"");
    assertThat(rule.getFormattingRanges()[0].getLastRow()).isEqualTo(300);
    long odd =
        Stream.iterate(1, i -> i + 1)
            .limit(300)
            .filter(i -> !pieces.text(i, "Odd").isEmpty())
            .count();
    PieceLookup lookup = harbour.facts(true).lookup();
    assertThat(odd)
        .isEqualTo(harbour.pieces.stream().filter(each -> !lookup.oddOf(each).isEmpty()).count());
  }

  @Test
  void headersStayFilterAndPrintOnEachPage() {
    for (String name : TABLES) {
      XSSFSheet sheet = workbook.getSheet(name);
      assertThat(sheet.getPaneInformation().isFreezePane()).isTrue();
      assertThat(sheet.getPaneInformation().getHorizontalSplitTopRow()).isEqualTo((short) 1);
      assertThat(sheet.getTables()).hasSize(1);
      XSSFTable table = sheet.getTables().get(0);
      assertThat(table.getCTTable().getAutoFilter().getRef())
          .isEqualTo(table.getCTTable().getRef());
      assertThat(table.getEndRowIndex()).isEqualTo(sheet.getLastRowNum());
      assertThat(table.getColumnCount()).isEqualTo(new Grid(sheet).headers().size());
      assertThat(sheet.getPrintSetup().getLandscape()).isTrue();
      assertThat(sheet.getFitToPage()).isTrue();
      assertThat(sheet.getRepeatingRows().getLastRow()).isZero();
    }
  }

  @Test
  void everyColumnIsExplainedWithUnitWorkingAndSource() {
    Grid columns = grid("Columns");
    Map<String, String> units = new HashMap<>();
    for (int i = 1; i <= columns.sheet().getLastRowNum(); i++) {
      units.put(
          columns.text(i, "Sheet") + "/" + columns.text(i, "Column"), columns.text(i, "Unit"));
      for (String header : List.of("What it is", "How it is worked out", "Source")) {
        assertThat(columns.text(i, header)).isNotBlank().doesNotContain("[sheet");
      }
    }
    for (String name : TABLES) {
      for (String header : grid(name).headers()) {
        boolean plain = units.containsKey(name + "/" + header);
        String bare = header.replaceAll(" \\([^()]*\\)$", "");
        String unit = plain ? "" : " (" + units.get(name + "/" + bare) + ")";
        assertThat(header).isEqualTo(plain ? header : bare + unit);
      }
    }
  }

  @Test
  void clothsStandWithTheMeanOfTheirReadings() {
    Grid cloths = grid("Cloths");
    List<ClothReading> readings = harbour.book.clothLog().allReadings();
    assertThat(cloths.sheet().getLastRowNum()).isEqualTo(2);
    for (int row = 1; row <= 2; row++) {
      // Readings of 150, 151 and 152 over a gauge of 100, released to 103.
      assertThat(cloths.number(row, "Stretch, mean (%)")).isCloseTo(51, within(1e-9));
      assertThat(cloths.number(row, "Growth, mean (%)")).isCloseTo(3, within(1e-9));
      assertThat(cloths.number(row, "Readings that count")).isEqualTo(3);
      double recovery = (100.0 * 47 / 50 + 100.0 * 48 / 51 + 100.0 * 49 / 52) / 3;
      assertThat(cloths.number(row, "Recovery, mean (%)")).isCloseTo(recovery, within(1e-9));
    }
    assertThat(
            ClothStretch.of(readings).values().stream()
                .flatMap(each -> each.values().stream())
                .map(ClothStretch::uncertainty))
        .contains(cloths.number(1, "Standard uncertainty (points)"));
  }

  @Test
  void namesInEveryAlphabetSurvive() {
    Grid progress = grid("Progress");
    List<String> names =
        Stream.iterate(1, i -> i + 1).limit(6).map(i -> progress.text(i, "Student")).toList();
    assertThat(names).containsExactlyInAnyOrderElementsOf(HarbourClass.NAMES);
    Grid pieces = grid("Pieces");
    assertThat(HarbourClass.NAMES).contains(pieces.text(1, "Student"));
    // One piece and three readings.
    assertThat(progress.number(1, "Lesson 1 planned: Seams that stretch")).isEqualTo(4);
  }

  @Test
  void aSecondExportSaysTheSame(@TempDir Path folder) throws IOException {
    Path again = harbour.export(folder.resolve("again.xlsx"), true).value();
    assertThat(Parts.of(again)).isEqualTo(Parts.of(file));
  }

  private Grid grid(String sheet) {
    return new Grid(workbook.getSheet(sheet));
  }
}
