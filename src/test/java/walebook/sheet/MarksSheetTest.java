package walebook.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.assess.CheckPiece;
import walebook.act.assess.GiveFeedback;
import walebook.act.assess.KeepCriteria;
import walebook.act.assess.TagEvidence;
import walebook.book.Classroom;
import walebook.record.CheckedBy;
import walebook.record.Criterion;
import walebook.record.PieceCode;
import walebook.record.TestPiece;

/** Marks and coverage in the workbook, read back by two readers that share no code. */
class MarksSheetTest {
  @TempDir Path folder;
  private HarbourClass harbour;

  @BeforeEach
  void assess() {
    harbour = HarbourClass.in(folder.resolve("class.walebook"), 8);
    List<Criterion> criteria =
        new KeepCriteria(harbour.book, Classroom.CLOCK)
            .addList(
                harbour.schoolClass.id(),
                "1.1 Chooses a stitch\n1.2 =SUM(A1) as Ada Pier says\n2.1 Works safely",
                "")
            .value();
    TagEvidence tag = new TagEvidence(harbour.book);
    TestPiece first = harbour.pieces.get(0);
    tag.piece(criteria.get(0).id(), first.id(), true);
    tag.piece(criteria.get(1).id(), first.id(), true);
    CheckPiece check = new CheckPiece(harbour.book, Classroom.CLOCK);
    check.check(first.id(), CheckedBy.SELF, Map.of("choice-mark", "3")).value();
    check
        .check(
            first.id(),
            CheckedBy.TUTOR,
            Map.of(
                "choice-mark", "2",
                "technique-mark", "1",
                "performance-mark", "0",
                "finish-mark", "2",
                "reasoning-mark", "3",
                "help-given", "hands-on"))
        .value();
    new GiveFeedback(harbour.book, Classroom.CLOCK).give(first.id(), "Well told.", "", false);
  }

  @AfterEach
  void close() {
    harbour.close();
  }

  private Path export(boolean names) {
    return harbour.export(folder.resolve(names + ".xlsx"), names).value();
  }

  @Test
  void studentAndTutorStandSideBySideInTypedCells() throws IOException {
    try (XSSFWorkbook workbook = Grid.open(export(true))) {
      Grid marks = new Grid(workbook.getSheet("Marks"));
      TestPiece first = harbour.pieces.get(0);
      assertThat(marks.text(1, "Piece")).isEqualTo(PieceCode.spoken(first.code()));
      assertThat(marks.number(1, "Choice, student (0 to 3)")).isEqualTo(3);
      assertThat(marks.cell(1, "Finish, student (0 to 3)").getCellType()).isEqualTo(CellType.BLANK);
      assertThat(marks.number(1, "Performance, tutor (0 to 3)")).isZero();
      assertThat(marks.number(1, "Record and reasoning, tutor (0 to 3)")).isEqualTo(3);
      assertThat(marks.text(1, "Help, tutor")).isEqualTo("hands-on");
      assertThat(marks.text(1, "Result")).isEqualTo("passes in reasoning");
      assertThat(marks.text(1, "Criteria")).isEqualTo("1.1, 1.2");
      assertThat(marks.number(1, "Comments")).isEqualTo(1);
      assertThat(DateUtil.isCellDateFormatted(marks.cell(1, "Checked on, tutor"))).isTrue();
    }
  }

  @Test
  void coverageCountsEveryStudentAndCriterion() throws IOException {
    try (XSSFWorkbook workbook = Grid.open(export(true))) {
      XSSFSheet sheet = workbook.getSheet("Criteria coverage");
      Grid coverage = new Grid(sheet);
      int rows = 3 * harbour.students.size();
      XSSFTable table = sheet.getTables().get(0);
      assertThat(table.getEndRowIndex()).isEqualTo(rows);
      Map<String, Integer> standings = new HashMap<>();
      for (int i = 1; i <= rows; i++) {
        standings.merge(coverage.text(i, "Standing"), 1, Integer::sum);
        boolean covered = coverage.number(i, "Of them pass") > 0;
        assertThat(coverage.text(i, "Covered")).isEqualTo(covered ? "covered" : "missing");
      }
      assertThat(standings).containsEntry("passes in reasoning", 2);
      assertThat(standings).containsEntry("no piece yet", rows - 2);
      var rule = sheet.getSheetConditionalFormatting().getConditionalFormattingAt(0);
      assertThat(rule.getFormattingRanges()[0].getLastRow()).isEqualTo(rows);
      assertThat(rule.getRule(0).getFormula1()).endsWith("2=\"missing\"");
    }
  }

  @Test
  void bothAreSignedFilteredAndPrintAsTheOthersDo() throws IOException {
    try (XSSFWorkbook workbook = Grid.open(export(true))) {
      for (String name : List.of("Marks", "Criteria coverage")) {
        XSSFSheet sheet = workbook.getSheet(name);
        assertThat(sheet.getTables().get(0).getCTTable().getAutoFilter()).isNotNull();
        assertThat(sheet.getPrintSetup().getLandscape()).isTrue();
        assertThat(sheet.getRepeatingRows().getLastRow()).isZero();
        int after = sheet.getTables().get(0).getEndRowIndex() + 2;
        // Eight pieces, two checks and one comment, by hand.
        assertThat(sheet.getRow(after).getCell(0).getStringCellValue())
            .contains("11 (pieces 8, checks 2, comments 1)", "2026-10-05 18:30");
        assertThat(sheet.getRow(after + 1).getCell(0).getStringCellValue())
            .isEqualTo("Tutor (" + HarbourClass.TUTOR + ")");
        assertThat(sheet.getRow(after + 2).getCell(0).getStringCellValue()).isEqualTo("Assessor");
        assertThat(sheet.getRow(after + 3).getCell(0).getStringCellValue()).isEqualTo("Date");
      }
      Grid columns = new Grid(workbook.getSheet("Columns"));
      long explained =
          java.util.stream.IntStream.rangeClosed(1, columns.sheet().getLastRowNum())
              .filter(i -> List.of("Marks", "Criteria coverage").contains(columns.text(i, "Sheet")))
              .filter(i -> !columns.text(i, "How it is worked out").contains("["))
              .count();
      assertThat(explained)
          .isEqualTo(
              (long) workbook.getSheet("Marks").getTables().get(0).getColumnCount()
                  + workbook.getSheet("Criteria coverage").getTables().get(0).getColumnCount());
    }
  }

  /** Twelve criteria on one piece, and a lesson's title and names that go on and on. */
  @Test
  void eachRowIsWholeOnOnePageAcross() throws IOException {
    StringBuilder list = new StringBuilder();
    for (int i = 1; i <= 9; i++) {
      list.append("Unit").append(i).append(" Says in whole sentences what was changed and why\n");
    }
    List<Criterion> more =
        new KeepCriteria(harbour.book, Classroom.CLOCK)
            .addList(harbour.schoolClass.id(), list.toString(), "")
            .value();
    TagEvidence tag = new TagEvidence(harbour.book);
    more.forEach(each -> tag.piece(each.id(), harbour.pieces.get(0).id(), true));
    try (XSSFWorkbook workbook = Grid.open(export(true))) {
      for (String name : List.of("Marks", "Criteria coverage")) {
        XSSFSheet sheet = workbook.getSheet(name);
        XSSFTable table = sheet.getTables().get(0);
        assertThat(sheet.getPrintSetup().getFitWidth()).as(name).isEqualTo((short) 1);
        int across = 0;
        for (int i = 0; i < table.getColumnCount(); i++) {
          across += sheet.getColumnWidth(i) / 256;
        }
        assertThat(across).as("signs that can be read across a page").isLessThanOrEqualTo(210);
        for (int at = 1; at <= table.getEndRowIndex(); at++) {
          for (var cell : sheet.getRow(at)) {
            if (cell.getCellType() == CellType.STRING) {
              assertThat(cell.getCellStyle().getWrapText()).as(cell.getAddress() + "").isTrue();
              int width = sheet.getColumnWidth(cell.getColumnIndex()) / 256 - 2;
              float lines = (float) Math.ceil((double) cell.toString().length() / width);
              assertThat(sheet.getRow(at).getHeightInPoints()).isGreaterThanOrEqualTo(15 * lines);
            }
          }
        }
      }
      XSSFSheet marks = workbook.getSheet("Marks");
      assertThat(new Grid(marks).text(1, "Criteria")).contains("Unit9");
      assertThat(marks.getRow(1).getHeightInPoints()).isGreaterThanOrEqualTo(15 * 5);
      assertThat(new Grid(marks).cell(0, "Choice, tutor (0 to 3)").getCellStyle().getRotation())
          .isEqualTo((short) 90);
    }
  }

  @Test
  void theOtherReaderFindsTheSameCellsAndNoFormula() throws IOException {
    Path file = export(true);
    try (XSSFWorkbook workbook = Grid.open(file);
        ReadableWorkbook read = new ReadableWorkbook(file.toFile())) {
      for (String name : List.of("Marks", "Criteria coverage")) {
        XSSFSheet same = Objects.requireNonNull(workbook.getSheet(name));
        for (Row row : read.findSheet(name).orElseThrow().read()) {
          row.stream().filter(Objects::nonNull).forEach(cell -> Grid.same(same, cell));
        }
      }
    }
  }

  @Test
  void withCodesNobodysNameIsInIt() throws IOException {
    String all = String.join("\n", Parts.of(export(false)).values());
    HarbourClass.NAMES.forEach(name -> assertThat(all).doesNotContain(name));
    assertThat(all).doesNotContain(HarbourClass.TUTOR).contains("Works safely");
  }
}
