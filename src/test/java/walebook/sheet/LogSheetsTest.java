package walebook.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.classroom.ExportTerm;
import walebook.book.Classroom;
import walebook.book.Ids;
import walebook.record.Cloth;
import walebook.record.ClothReading;
import walebook.record.How;
import walebook.record.Note;
import walebook.record.PieceCode;
import walebook.record.Student;
import walebook.record.Tier;

/** What was measured, planned and noted beside the pieces has sheets of its own. */
class LogSheetsTest {
  @TempDir Path folder;

  /** ISO 5077: 100 x (475 - 500) / 500 is -5, and 100 x (505 - 500) / 500 is 1. */
  @Test
  void aWashHasItsLengthsBothWays() throws IOException {
    try (HarbourClass harbour = HarbourClass.in(folder.resolve("a.walebook"), 12);
        XSSFWorkbook workbook = Grid.open(export(harbour, TermChoice.CODES))) {
      Grid washes = new Grid(workbook.getSheet("Washes"));
      assertThat(washes.sheet().getLastRowNum()).isEqualTo(2);
      int wale = washes.text(1, "Grain").equals("wale-wise") ? 1 : 2;
      int course = 3 - wale;
      assertThat(washes.text(course, "Grain")).isEqualTo("course-wise");
      assertThat(washes.number(wale, "Before the wash (mm)")).isEqualTo(500);
      assertThat(washes.number(wale, "After the wash (mm)")).isEqualTo(475);
      assertThat(washes.number(wale, "Change (%)")).isEqualTo(-5);
      assertThat(washes.number(course, "Change (%)")).isEqualTo(1);
      assertThat(washes.text(wale, "Wash")).isEqualTo("40 °C, line");
      assertThat(washes.text(wale, "Cloth")).isEqualTo("Grey jersey");
      assertThat(DateUtil.isCellDateFormatted(washes.cell(wale, "Washed on"))).isTrue();
      assertThat(washes.cell(wale, "Washed on").getLocalDateTimeCellValue().toLocalDate())
          .isEqualTo(LocalDate.of(2026, 9, 4));
    }
  }

  /** 100 x (151 - 100) / 100 is 51. */
  @Test
  void eachReadingStandsByItselfAndBesideWhatWasAsked() throws IOException {
    try (HarbourClass harbour = HarbourClass.in(folder.resolve("b.walebook"), 12);
        XSSFWorkbook workbook = Grid.open(export(harbour, TermChoice.CODES))) {
      Grid readings = new Grid(workbook.getSheet("Readings"));
      assertThat(readings.sheet().getLastRowNum()).isEqualTo(6);
      assertThat(readings.number(2, "Gauge length, L0 (mm)")).isEqualTo(100);
      assertThat(readings.number(2, "Stretched length, L1 (mm)")).isEqualTo(151);
      assertThat(readings.number(2, "Stretch (%)")).isEqualTo(51);
      assertThat(readings.text(2, "Measured by")).isEqualTo("S01");
      assertThat(readings.text(2, "Where on the cloth")).isEqualTo("inside the cloth");

      Grid planned = new Grid(workbook.getSheet("Planned readings"));
      assertThat(planned.sheet().getLastRowNum()).isEqualTo(harbour.students.size());
      assertThat(planned.number(1, "Readings asked")).isEqualTo(3);
      assertThat(planned.number(1, "Readings made")).isZero();
      assertThat(planned.text(1, "Done")).isEqualTo("no");
      assertThat(planned.text(1, "Cloth")).isEqualTo("Grey jersey");
    }
  }

  @Test
  void notesComeWithWhatTheyAreAboutAndNotesAboutAPersonStay() throws IOException {
    try (HarbourClass harbour = HarbourClass.in(folder.resolve("c.walebook"), 12)) {
      var piece = harbour.pieces.get(0);
      String whose =
          harbour.students.stream()
              .filter(each -> each.id().equals(piece.whose().studentId()))
              .map(each -> each.alias())
              .findFirst()
              .orElseThrow();
      harbour.note(
          Note.About.PIECE, piece.id(), HarbourClass.NAMES.get(1), "As Ada Pier showed me.");
      try (XSSFWorkbook workbook = Grid.open(export(harbour, TermChoice.CODES))) {
        Grid notes = new Grid(workbook.getSheet("Notes"));
        assertThat(notes.sheet().getLastRowNum()).isEqualTo(3);
        int row = row(notes, "test piece");
        assertThat(notes.text(row, "Which")).isEqualTo(PieceCode.spoken(piece.code()));
        assertThat(notes.text(row, "Student")).isEqualTo(whose);
        assertThat(notes.text(row, "From")).isEqualTo("S02");
        assertThat(notes.text(row, "Note")).isEqualTo("As S01 showed me.");
        assertThat(notes.text(row(notes, "cloth"), "From")).isEqualTo("the tutor");
        assertThat(notes.text(row(notes, "lesson"), "From"))
            .as("nothing stands for somebody whom the book does not know")
            .isEmpty();
        assertThat(notes.text(row(notes, "lesson"), "Which")).isEqualTo("Seams that stretch");
      }
      try (XSSFWorkbook workbook = Grid.open(export(harbour, TermChoice.CODES.withNames(true)))) {
        Grid notes = new Grid(workbook.getSheet("Notes"));
        assertThat(notes.text(row(notes, "test piece"), "From"))
            .isEqualTo(HarbourClass.NAMES.get(1));
        assertThat(notes.text(row(notes, "lesson"), "From")).isEqualTo("M");
      }
    }
  }

  @Test
  void onlyWhatTheChosenStudentMadeGoesOutAndThePreviewCountsIt() throws IOException {
    try (HarbourClass harbour = HarbourClass.in(folder.resolve("d.walebook"), 12)) {
      harbour.note(Note.About.PIECE, harbour.pieces.get(0).id(), "", "Of one student.");
      for (int i = 0; i < harbour.students.size(); i++) {
        var id = harbour.students.get(i).id();
        boolean sewed = harbour.pieces.get(0).whose().studentId().equals(id);
        TermChoice choice = TermChoice.CODES.ofStudents(Set.of(id));
        Map<String, Integer> rows =
            new ExportTerm(harbour.book, HarbourClass.WORDS, HarbourClass.TABLES, Classroom.CLOCK)
                .preview(harbour.schoolClass.id(), choice).value().sheets().stream()
                    .collect(Collectors.toMap(TermPreview.Sheet::name, TermPreview.Sheet::rows));
        assertThat(rows.get("Planned readings")).isEqualTo(1);
        assertThat(rows.get("Notes")).isEqualTo(sewed ? 3 : 2);
        assertThat(rows.getOrDefault("Readings", 0)).isEqualTo(i == 0 ? 6 : 0);
        try (XSSFWorkbook workbook = Grid.open(export(harbour, choice))) {
          for (String each : Set.of("Planned readings", "Notes", "Washes")) {
            assertThat(workbook.getSheet(each).getLastRowNum()).isEqualTo(rows.get(each));
          }
        }
      }
    }
  }

  @Test
  void readingsOfAClothThatIsUsedUpAndWasNeverSewnGoOutToo() throws IOException {
    try (HarbourClass harbour = HarbourClass.in(folder.resolve("e.walebook"), 12)) {
      Cloth like = harbour.book.cloths().all().get(0);
      Cloth usedUp =
          new Cloth(
              Ids.next(),
              "Used-up rib",
              like.kind(),
              like.fibre(),
              like.elastanePercent(),
              like.massGm2(),
              like.widthMm(),
              like.thicknessMm(),
              like.edge(),
              "",
              /* retired= */ true,
              Classroom.FRESH);
      harbour.book.cloths().add(usedUp);
      ClothReading was = harbour.book.clothLog().readingsOf(like.id()).get(0);
      harbour
          .book
          .clothLog()
          .add(
              new ClothReading(
                  Ids.next(),
                  usedUp.id(),
                  was.classId(),
                  was.lessonId(),
                  was.measuredBy(),
                  was.grain(),
                  was.gaugeMm(),
                  was.stretchedMm(),
                  was.releasedMm(),
                  was.how(),
                  was.edge(),
                  was.cycle(),
                  was.measuredOn(),
                  "",
                  Classroom.FRESH));
      try (XSSFWorkbook workbook = Grid.open(export(harbour, TermChoice.CODES))) {
        Grid readings = new Grid(workbook.getSheet("Readings"));
        assertThat(readings.sheet().getLastRowNum()).isEqualTo(7);
        assertThat(readings.text(7, "Cloth")).isNotEmpty();
      }
    }
  }

  /** As a spreadsheet shows them, not only as it holds them. */
  @Test
  void halfSecondsAreShownAsTheyWereTyped() throws IOException {
    try (HarbourClass harbour = HarbourClass.in(folder.resolve("g.walebook"), 12)) {
      Cloth cloth = harbour.book.cloths().all().get(0);
      ClothReading was = harbour.book.clothLog().readingsOf(cloth.id()).get(0);
      harbour
          .book
          .clothLog()
          .add(
              new ClothReading(
                  Ids.next(),
                  was.clothId(),
                  was.classId(),
                  was.lessonId(),
                  was.measuredBy(),
                  was.grain(),
                  was.gaugeMm(),
                  was.stretchedMm(),
                  was.releasedMm(),
                  new How(null, null, null, 2.5, 30.0),
                  was.edge(),
                  was.cycle(),
                  was.measuredOn(),
                  "Half a breath.",
                  Classroom.FRESH));
      try (XSSFWorkbook workbook = Grid.open(export(harbour, TermChoice.CODES))) {
        Grid readings = new Grid(workbook.getSheet("Readings"));
        int row = 1;
        while (!readings.text(row, "Remark").equals("Half a breath.")) {
          row++;
        }
        DataFormatter shown = new DataFormatter(Locale.ROOT);
        assertThat(shown.formatCellValue(readings.cell(row, "Held stretched (s)")))
            .isEqualTo("2.5");
        assertThat(shown.formatCellValue(readings.cell(row, "Rest (s)"))).isEqualTo("30");
      }
    }
  }

  @Test
  void aNameThatTwoPeopleHaveStandsForNoCode() throws IOException {
    try (HarbourClass harbour = HarbourClass.in(folder.resolve("f.walebook"), 12)) {
      String name = HarbourClass.NAMES.get(1);
      harbour
          .book
          .students()
          .add(new Student(Ids.next(), name, "Z99", Tier.STANDARD, Classroom.FRESH));
      harbour.note(
          Note.About.PIECE, harbour.pieces.get(0).id(), name, "Once more, said " + name + ".");
      try (XSSFWorkbook workbook = Grid.open(export(harbour, TermChoice.CODES))) {
        Grid notes = new Grid(workbook.getSheet("Notes"));
        int row = row(notes, "test piece");
        assertThat(notes.text(row, "From")).isEmpty();
        assertThat(notes.text(row, "Note")).doesNotContain(name).contains("/Z99.");
      }
    }
  }

  private static int row(Grid notes, String about) {
    for (int i = 1; i <= notes.sheet().getLastRowNum(); i++) {
      if (notes.text(i, "About").equals(about)) {
        return i;
      }
    }
    throw new AssertionError("no note about a " + about);
  }

  private Path export(HarbourClass harbour, TermChoice choice) {
    return harbour.export(folder.resolve("term.xlsx"), choice, ExportProgress.UNHEARD).value();
  }
}
