package walebook.sheet.in;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;

/** Workbooks written by the library, read by our own hand. */
class ReadWorkbookTest {
  private static final String SHEET = "xl/worksheets/sheet1.xml";

  @TempDir Path folder;

  private Answer<InGrid> read(byte[] bytes) {
    Path file = MadeWorkbook.file(folder, "a.xlsx", bytes);
    return ReadTables.open(file).flatMap(found -> ReadTables.read(file, found.sheets().get(0)));
  }

  private static List<String> codes(Answer<?> answer) {
    return answer.problems().stream().map(Problem::code).toList();
  }

  private byte[] changed(byte[] workbook, String part, String from, String to) {
    Map<String, byte[]> parts = MadeWorkbook.parts(workbook);
    String xml = new String(parts.getOrDefault(part, new byte[0]), StandardCharsets.UTF_8);
    assertThat(xml).contains(from);
    parts.put(part, xml.replace(from, to).getBytes(StandardCharsets.UTF_8));
    return MadeWorkbook.packed(parts);
  }

  @Test
  void wordsNumbersAndDaysKeepTheirKind() {
    InGrid grid =
        read(MadeWorkbook.of(
                "Samples",
                new Object[] {"Name", 2.5, LocalDate.of(2026, 10, 5), ""},
                new Object[] {"", "", ""},
                new Object[] {"=1+1", "+44 20", "ליאור גל", "👩🏽‍🧵", 0.1 + 0.2}))
            .value();
    assertThat(grid.rows()).extracting(InRow::number).containsExactly(1, 3);
    assertThat(grid.rows().get(0).cells())
        .containsExactly(
            InCell.words("Name"),
            new InCell(InCell.Kind.NUMBER, "2.5", false),
            new InCell(InCell.Kind.DAY, "2026-10-05", false));
    assertThat(grid.rows().get(1).cells())
        .extracting(InCell::text)
        .containsExactly("=1+1", "+44 20", "ליאור גל", "👩🏽‍🧵", "0.30000000000000004");
    assertThat(grid.remarks()).isEmpty();
  }

  @Test
  void formulasGiveTheirSavedValueErrorsAndUnsavedOnesAreNamed() {
    byte[] made =
        MadeWorkbook.with(
            workbook -> {
              XSSFRow row = workbook.createSheet("S").createRow(0);
              row.createCell(0).setCellFormula("1+1");
              row.createCell(1).setCellFormula("\"a\"&\"b\"");
              row.createCell(2).setCellErrorValue(FormulaError.DIV0.getCode());
              FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
              evaluator.evaluateFormulaCell(row.getCell(0));
              evaluator.evaluateFormulaCell(row.getCell(1));
              row.createCell(3).setCellFormula("2+2");
            });
    InGrid grid = read(made).value();
    assertThat(grid.rows().get(0).cells())
        .containsExactly(
            new InCell(InCell.Kind.NUMBER, "2", true),
            new InCell(InCell.Kind.TEXT, "ab", true),
            new InCell(InCell.Kind.ERROR, "#DIV/0!", false),
            new InCell(InCell.Kind.UNKNOWN, "", true));
    assertThat(grid.remarks())
        .contains(Problem.ask("in.formulas", new Place.Cell("S", 1, "A"), "3", ""));
  }

  @Test
  void ofMergedCellsOnlyTheFirstHasTheValueAndThatIsSaid() {
    byte[] made =
        MadeWorkbook.with(
            workbook -> {
              XSSFSheet sheet = workbook.createSheet("S");
              sheet.createRow(0).createCell(0).setCellValue("both");
              sheet.addMergedRegion(new CellRangeAddress(0, 0, 0, 1));
            });
    InGrid grid = read(made).value();
    assertThat(grid.rows().get(0).cells()).hasSize(1);
    assertThat(grid.remarks()).extracting(Problem::code).containsExactly("in.merged");
  }

  @Test
  void daysOfBothCountsAndDaysThatCantBe() {
    byte[] made =
        MadeWorkbook.with(
            workbook -> {
              XSSFRow row = workbook.createSheet("S").createRow(0);
              CellStyle day = workbook.createCellStyle();
              day.setDataFormat((short) 14);
              double[] serials = {46300, 60, -3};
              for (int i = 0; i < serials.length; i++) {
                row.createCell(i).setCellValue(serials[i]);
                row.getCell(i).setCellStyle(day);
              }
            });
    assertThat(read(made).value().rows().get(0).cells())
        .extracting(InCell::kind)
        .containsExactly(InCell.Kind.DAY, InCell.Kind.NO_DAY, InCell.Kind.NO_DAY);
    byte[] later =
        changed(
            made,
            "xl/workbook.xml",
            "<workbookPr date1904=\"false\"/>",
            "<workbookPr date1904=\"1\"/>");
    assertThat(read(later).value().rows().get(0).at(0).text()).isEqualTo("2030-10-06");
    assertThat(read(made).value().rows().get(0).at(0).text()).isEqualTo("2026-10-05");
  }

  @Test
  void macrosAndLinksAreLeftAloneAndSaid() {
    Map<String, byte[]> parts = MadeWorkbook.parts(MadeWorkbook.of("S", new Object[] {"a"}));
    parts.put("xl/vbaProject.bin", new byte[] {1, 2});
    parts.put("xl/externalLinks/externalLink1.xml", "<x/>".getBytes(StandardCharsets.UTF_8));
    Map<String, byte[]> typed =
        MadeWorkbook.parts(
            changed(
                MadeWorkbook.packed(parts),
                "[Content_Types].xml",
                "</Types>",
                "<Default Extension=\"bin\""
                    + " ContentType=\"application/vnd.ms-office.vbaProject\"/></Types>"));
    Path file = MadeWorkbook.file(folder, "m.xlsm", MadeWorkbook.packed(typed));
    assertThat(ReadTables.open(file).value().remarks())
        .extracting(Problem::code)
        .containsExactly("in.macros", "in.links");
  }

  @Test
  void oneRowTooManyOneColumnTooFarAndACellTooLongAreRefused() {
    byte[] made = MadeWorkbook.of("S", new Object[] {"a"}, new Object[] {"b"});
    assertThat(codes(read(changed(made, SHEET, "<row r=\"2\"", "<row r=\"1048577\""))))
        .containsExactly("in.too-many-rows");
    assertThat(codes(read(changed(made, SHEET, "r=\"A2\"", "r=\"XFD2\""))))
        .containsExactly("in.too-many-columns");
    String inline = "t=\"inlineStr\"><is><t>" + "x".repeat(32_768) + "</t></is>";
    byte[] longer = changed(made, SHEET, "r=\"A2\" t=\"s\" s=\"0\"><v>1</v>", "r=\"A2\" " + inline);
    assertThat(codes(read(longer))).containsExactly("in.cell-too-long");
  }

  @Test
  void rowsOutOfOrderAreDamage() {
    byte[] made = MadeWorkbook.of("S", new Object[] {"a"}, new Object[] {"b"});
    assertThat(codes(read(changed(made, SHEET, "<row r=\"2\"", "<row r=\"1\""))))
        .containsExactly("in.damaged");
  }

  @Test
  void escapedSignsAreReadAsTheyWere() {
    InGrid grid = read(MadeWorkbook.of("S", new Object[] {"a_x005F_x0041_b"})).value();
    assertThat(grid.rows().get(0).at(0).text()).isEqualTo("a_x0041_b");
  }

  @Test
  void otherFilesAreToldApart() {
    Map<String, String> files =
        Map.of(
            "PK\3\4 and then nothing", "in.damaged",
            "\0\1\2", "in.no-text",
            "", "in.empty-file");
    files.forEach(
        (text, code) ->
            assertThat(codes(read(text.getBytes(StandardCharsets.ISO_8859_1))))
                .as(code)
                .containsExactly(code));
    byte[] old = {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, 0, 0};
    assertThat(codes(read(old))).containsExactly("in.old-or-locked");
    byte[] packed = MadeWorkbook.packed(Map.of("a.txt", new byte[] {1}));
    assertThat(codes(read(packed))).containsExactly("in.no-workbook");
    byte[] open = MadeWorkbook.packed(Map.of("mimetype", new byte[1], "content.xml", new byte[1]));
    assertThat(codes(read(open))).containsExactly("in.open-document");
    assertThat(codes(ReadTables.open(folder))).containsExactly("in.no-file");
    assertThat(codes(ReadTables.open(folder.resolve("gone.xlsx")))).containsExactly("in.no-file");
  }

  @Test
  void entitiesAreNotUnfolded() {
    byte[] made = MadeWorkbook.of("S", new Object[] {"a"});
    byte[] bomb =
        changed(
            made,
            SHEET,
            "<worksheet",
            "<!DOCTYPE lolz [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;\">]><worksheet");
    assertThat(codes(read(bomb))).containsExactly("in.damaged");
  }

  @Test
  void aSheetThatIsNotThereIsNamedWithThoseThatAre() {
    Path file = MadeWorkbook.file(folder, "b.xlsx", MadeWorkbook.with(XSSFWorkbook::createSheet));
    Problem problem = ReadTables.read(file, "Other").problems().get(0);
    assertThat(problem.code()).isEqualTo("in.no-sheet");
    assertThat(problem.wanted()).isEqualTo("Sheet0");
  }
}
