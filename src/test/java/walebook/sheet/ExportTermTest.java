package walebook.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.classroom.ExportTerm;
import walebook.act.cloth.ClothCard;
import walebook.act.cloth.ReadClothCard;
import walebook.act.lesson.ReadLessons;
import walebook.book.Classroom;
import walebook.book.Ids;
import walebook.compare.ClothStretch;
import walebook.compare.ReadingsThatCount;
import walebook.problem.Answer;
import walebook.problem.Problem;
import walebook.record.By;
import walebook.record.ClothReading;
import walebook.record.Mark;
import walebook.record.MarkedValue;

/** The file appears whole or not at all, and what is in the way is said. */
class ExportTermTest {
  @TempDir Path folder;

  @Test
  void anEmptyClassExportsToo() throws IOException {
    try (HarbourClass harbour = HarbourClass.empty(folder.resolve("class.walebook"))) {
      Path file = harbour.export(folder.resolve("term.xlsx"), true).value();
      try (XSSFWorkbook workbook = Grid.open(file)) {
        assertThat(workbook.getSheet("Pieces").getLastRowNum()).isZero();
        assertThat(workbook.getSheet("Pieces").getTables().get(0).getCTTable().getRef())
            .endsWith("2");
        assertThat(workbook.getSheet("Charts")).isNull();
        assertThat(text(workbook)).contains("No test piece has been logged yet.");
      }
    }
  }

  @Test
  void aCancelledExportLeavesNothingAndSparesWhatWasThere() throws IOException {
    try (HarbourClass harbour = HarbourClass.in(folder.resolve("class.walebook"), 120)) {
      Path place = Files.createDirectory(folder.resolve("out"));
      Path file = Files.writeString(place.resolve("term.xlsx"), "as it was");
      for (double stopAt : new double[] {0, 0.05, 0.5, 0.9, 1}) {
        assertThatThrownBy(() -> harbour.export(file, true, share -> stop(share, stopAt)))
            .isInstanceOf(CancellationException.class);
        assertThat(files(place)).containsExactly("term.xlsx");
        assertThat(file).hasContent("as it was");
      }
    }
  }

  @Test
  void aFileThatIsThereIsSparedUnlessItMayBeReplaced() throws IOException {
    try (HarbourClass harbour = HarbourClass.in(folder.resolve("class.walebook"), 5)) {
      Path file = Files.writeString(folder.resolve("term.xlsx"), "as it was");
      Answer<Path> answer =
          new ExportTerm(harbour.book, HarbourClass.WORDS, HarbourClass.TABLES, Classroom.CLOCK)
              .export(
                  file, harbour.schoolClass.id(), TermChoice.CODES, false, ExportProgress.UNHEARD);
      assertThat(code(answer)).isEqualTo("sheet.exists");
      assertThat(file).hasContent("as it was");
    }
  }

  @Test
  void thePreviewNamesThoseWhoStandInNotesAndWhatBecomesOfThem() throws IOException {
    try (HarbourClass harbour = HarbourClass.in(folder.resolve("class.walebook"), 20)) {
      harbour.sew(0, "sewn with josé  Núñez\nMuelle and BO's presser");
      harbour.sew(1, "seen by " + HarbourClass.TUTOR + ", like José");
      harbour.sew(1, "the pierhead jersey, adapted");
      harbour.sew(2, "ada showed me");
      TermPreview codes = preview(harbour, TermChoice.CODES);
      assertThat(codes.tutor()).isNull();
      assertThat(found(codes))
          .containsExactly(
              "José Núñez Muelle! Pieces 1 Cloths 2",
              HarbourClass.TUTOR + "! Pieces 1",
              "Ada Pieces 1",
              "José Pieces 1");
      TermPreview names = preview(harbour, TermChoice.CODES.withNames(true));
      assertThat(names.tutor()).isEqualTo(HarbourClass.TUTOR);
      assertThat(found(names)).isEqualTo(found(codes));
      TermPreview noNotes = preview(harbour, TermChoice.CODES.inColumns(java.util.Set.of("grade")));
      assertThat(found(noNotes)).containsExactly("José Núñez Muelle! Cloths 2");
    }
  }

  @Test
  void studentsStandInOneOrderOnEverySheetAndByTheirOwnSheets() throws IOException {
    try (HarbourClass harbour = HarbourClass.empty(folder.resolve("class.walebook"))) {
      for (int i = 0; i < 11; i++) {
        harbour.enrol(List.of("Zoe", "Élise", "eva", "Eda").get(i % 4) + " Quay " + i);
      }
      List<String> codes = harbour.students.stream().map(each -> each.alias()).toList();
      assertThat(tabs(harbour, false)).isEqualTo(codes);
      List<String> names = tabs(harbour, true);
      assertThat(names).startsWith("Eda Quay 3", "Eda Quay 7", "Élise Quay 1", "Élise Quay 5");
      assertThat(names).endsWith("Zoe Quay 4", "Zoe Quay 8");
    }
  }

  /** The tabs of students' sheets, which are in the order of the sheet of progress. */
  private List<String> tabs(HarbourClass harbour, boolean names) throws IOException {
    Path file = folder.resolve(names + ".xlsx");
    new ExportTerm(harbour.book, HarbourClass.WORDS, HarbourClass.TABLES, Classroom.CLOCK)
        .export(
            file,
            harbour.schoolClass.id(),
            TermChoice.CODES.withNames(names).withStudentSheets(true),
            false,
            ExportProgress.UNHEARD)
        .value();
    try (XSSFWorkbook workbook = Grid.open(file)) {
      int count = workbook.getNumberOfSheets();
      List<String> tabs =
          java.util.stream.IntStream.range(count - harbour.students.size(), count)
              .mapToObj(workbook::getSheetName)
              .toList();
      List<String> progress = new ArrayList<>();
      for (int i = 1; i <= harbour.students.size(); i++) {
        progress.add(workbook.getSheet("Progress").getRow(i).getCell(0).getStringCellValue());
      }
      assertThat(progress).isEqualTo(tabs);
      return tabs;
    }
  }

  private static TermPreview preview(HarbourClass harbour, TermChoice choice) {
    return new ExportTerm(harbour.book, HarbourClass.WORDS, HarbourClass.TABLES, Classroom.CLOCK)
        .preview(harbour.schoolClass.id(), choice)
        .value();
  }

  private static List<String> sheets(XSSFWorkbook workbook) {
    List<String> names = new ArrayList<>();
    workbook.forEach(each -> names.add(each.getSheetName()));
    return names;
  }

  /** Names of all sheets of the workbook: what stands on one follows its name after a comma. */
  private static List<String> told(TermPreview preview) {
    List<String> names = new ArrayList<>();
    preview.sheets().forEach(each -> names.add(each.name()));
    preview.besides().forEach(each -> names.add(each.says().split(",")[0]));
    return names;
  }

  private static List<String> found(TermPreview preview) {
    return preview.inText().stream()
        .map(
            each ->
                each.name()
                    + (each.whole() ? "!" : "")
                    + each.places().stream()
                        .map(in -> " " + in.sheet() + " " + in.cells())
                        .collect(java.util.stream.Collectors.joining()))
        .toList();
  }

  @Test
  void onlyWhatWasChosenGoesOutAndThePreviewSaidSo() throws IOException {
    try (HarbourClass harbour = HarbourClass.in(folder.resolve("class.walebook"), 60)) {
      var student = harbour.students.get(2);
      TermChoice choice =
          TermChoice.CODES
              .ofStudents(java.util.Set.of(student.id()))
              .inColumns(java.util.Set.of("student", "seam-stretch"))
              .withStudentSheets(true);
      long own =
          harbour.pieces.stream()
              .filter(each -> each.whose().studentId().equals(student.id()))
              .count();
      TermPreview preview =
          new ExportTerm(harbour.book, HarbourClass.WORDS, HarbourClass.TABLES, Classroom.CLOCK)
              .preview(harbour.schoolClass.id(), choice)
              .value();
      assertThat(preview.pieces()).isEqualTo((int) own).isGreaterThan(2);
      assertThat(preview.people()).containsExactly("S03");
      assertThat(preview.columns()).containsExactly("Piece", "Student", "Seam stretch (%)");
      Path file =
          harbour.export(folder.resolve("one.xlsx"), choice, ExportProgress.UNHEARD).value();
      try (XSSFWorkbook workbook = Grid.open(file)) {
        Grid pieces = new Grid(workbook.getSheet("Pieces"));
        assertThat(pieces.headers()).containsExactly("Piece", "Student", "Seam stretch (%)");
        assertThat(pieces.sheet().getLastRowNum()).isEqualTo((int) own);
        assertThat(sheets(workbook))
            .as("every sheet is told of before")
            .containsExactlyInAnyOrderElementsOf(told(preview));
        for (TermPreview.Sheet each : preview.sheets()) {
          if (!each.name().equals("S03")) {
            int rows = workbook.getSheet(each.name()).getLastRowNum();
            assertThat(rows).as(each.name()).isEqualTo(each.rows());
          }
        }
        assertThat(workbook.getSheet("S03").getLastRowNum()).isEqualTo((int) own + 2);
      }
    }
  }

  @Test
  void valuesSetAsideAreLeftOutOfComparisonsAndCounted() throws IOException {
    try (HarbourClass harbour = HarbourClass.in(folder.resolve("class.walebook"), 60)) {
      TermFacts before = harbour.facts(false);
      harbour
          .book
          .marks()
          .put(
              MarkedValue.SEAM_STRETCH,
              harbour.pieces.get(0).id(),
              Mark.SET_ASIDE,
              "slipped",
              By.NOBODY,
              Ids.next());
      TermFacts after = harbour.facts(false);
      assertThat(pulled(after)).isEqualTo(pulled(before) - 1);
      assertThat(after.comparison().setAside()).isEqualTo(1);
      assertThat(after.pieceCount()).isEqualTo(60);
      Path file = harbour.export(folder.resolve("term.xlsx"), false).value();
      try (XSSFWorkbook workbook = Grid.open(file)) {
        assertThat(text(workbook))
            .anyMatch(line -> line.contains("Values of test pieces that the tutor set aside: 1."));
      }
    }
  }

  @Test
  void aReadingSetAsideCountsForNothingThatIsSaidOfItsCloth() throws IOException {
    try (HarbourClass harbour = HarbourClass.in(folder.resolve("reading.walebook"), 20)) {
      ClothReading wrong = harbour.book.clothLog().allReadings().get(0);
      harbour
          .book
          .marks()
          .put(
              MarkedValue.CLOTH_STRETCH,
              wrong.id(),
              Mark.SET_ASIDE,
              "wrong grain",
              By.NOBODY,
              Ids.next());
      TermFacts facts = harbour.facts(false);
      assertThat(facts.comparison().setAside()).isZero();
      assertThat(facts.readingsAside()).isEqualTo(1);
      Path file = harbour.export(folder.resolve("term.xlsx"), false).value();
      try (XSSFWorkbook workbook = Grid.open(file)) {
        assertThat(text(workbook))
            .contains("Readings set aside")
            .anyMatch(line -> line.contains("Readings of cloths that the tutor set aside: 1."));
        Grid cloths = new Grid(workbook.getSheet("Cloths"));
        int row = cloths.text(1, "Cloth").equals(name(harbour, wrong)) ? 1 : 2;
        assertThat(cloths.number(row, "Readings")).isEqualTo(3);
        assertThat(cloths.number(row, "Readings set aside")).isEqualTo(1);
        assertThat(cloths.number(row, "Readings that count")).isEqualTo(2);
        assertThat(cloths.number(row, "Released readings")).isEqualTo(2);
        assertThat(cloths.number(3 - row, "Readings set aside")).isZero();
        Grid readings = new Grid(workbook.getSheet("Readings"));
        long aside =
            IntStream.rangeClosed(1, readings.sheet().getLastRowNum())
                .filter(each -> readings.text(each, "Set aside").equals("yes"))
                .count();
        assertThat(aside).isEqualTo(1);
      }
      // The window's card and everything that asks for a cloth's stretch leave it out, too.
      ClothCard card =
          Objects.requireNonNull(
              new ReadClothCard(harbour.book, HarbourClass.TABLES).card(wrong.clothId(), false));
      assertThat(card.readings()).hasSize(3);
      assertThat(card.isAside(wrong)).isTrue();
      assertThat(card.aside(wrong.grain())).isEqualTo(1);
      assertThat(card.grains().get(0).stretch().n()).isEqualTo(2);
      ClothStretch stretch =
          Objects.requireNonNull(
              ReadingsThatCount.stretchOf(harbour.book, wrong.clothId()).get(wrong.grain()));
      assertThat(stretch.n()).isEqualTo(2);
      assertThat(facts.findings().stretches().get(wrong.clothId()))
          .containsEntry(wrong.grain(), stretch);
    }
  }

  @Test
  void theListOfLessonsCountsOwnPiecesAsTheWorkbookDoes() throws IOException {
    try (HarbourClass harbour = HarbourClass.in(folder.resolve("own.walebook"), 30)) {
      var taken = new ReadLessons(harbour.book).taken(harbour.schoolClass.id()).get(0);
      TermFacts facts = harbour.facts(false);
      assertThat(taken.logged() + taken.own()).isEqualTo(facts.pieceCount()).isEqualTo(30);
      assertThat(taken.own())
          .isEqualTo(facts.progress().rows().stream().mapToInt(row -> row.own()).sum())
          .isPositive();
    }
  }

  private static String name(HarbourClass harbour, ClothReading reading) {
    return Objects.requireNonNull(harbour.book.cloths().find(reading.clothId())).name();
  }

  private static int pulled(TermFacts facts) {
    return facts.comparison().rows().stream().mapToInt(row -> row.gave() + row.held()).sum();
  }

  @Test
  void progressGrowsToTheEnd() {
    try (HarbourClass harbour = HarbourClass.in(folder.resolve("class.walebook"), 120)) {
      List<Double> told = new ArrayList<>();
      harbour.export(folder.resolve("term.xlsx"), true, told::add);
      assertThat(told).isSorted().hasSizeGreaterThan(4).startsWith(0.0).endsWith(1.0);
    }
  }

  @Test
  void aDiskThatFailsLeavesNothing() throws IOException {
    Path place = Files.createDirectory(folder.resolve("out"));
    assertThatThrownBy(
            () ->
                WholeFile.write(
                    place.resolve("term.xlsx"),
                    out -> {
                      out.write(new byte[100_000]);
                      throw new IOException("disk full");
                    }))
        .hasMessage("disk full");
    assertThat(files(place)).isEmpty();
  }

  @Test
  void whatIsInTheWayIsSaid() throws IOException {
    try (HarbourClass harbour = HarbourClass.in(folder.resolve("class.walebook"), 2)) {
      assertThat(code(harbour.export(folder.resolve("gone/term.xlsx"), true)))
          .isEqualTo("sheet.no-folder");
      assertThat(code(harbour.export(folder, true))).isEqualTo("sheet.is-folder");
      Path file = harbour.export(folder.resolve("term.xlsx"), true).value();
      Files.createFile(folder.resolve(".~lock.term.xlsx#"));
      assertThat(code(harbour.export(file, true))).isEqualTo("sheet.in-use");
      Path inFile = file.resolve("term.xlsx");
      assertThat(code(harbour.export(inFile, true))).isEqualTo("sheet.no-folder");
      Answer<Path> noClass =
          new ExportTerm(harbour.book, HarbourClass.WORDS, HarbourClass.TABLES, Classroom.CLOCK)
              .export(
                  folder.resolve("x.xlsx"),
                  Ids.next(),
                  TermChoice.CODES,
                  false,
                  ExportProgress.UNHEARD);
      assertThat(code(noClass)).isEqualTo("sheet.no-class");
      assertThat(folder.resolve("x.xlsx")).doesNotExist();
    }
  }

  private static void stop(double share, double at) {
    if (share >= at) {
      throw new CancellationException();
    }
  }

  /** The code of the one problem, whose sentence must be in the bundle. */
  private static String code(Answer<Path> answer) {
    assertThat(answer.isGood()).isFalse();
    Problem problem = answer.problems().get(0);
    assertThat(HarbourClass.WORDS.say(problem)).doesNotContain("[problem");
    return problem.code();
  }

  private static List<String> files(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(each -> each.getFileName().toString()).toList();
    }
  }

  private static List<String> text(XSSFWorkbook workbook) {
    List<String> text = new ArrayList<>();
    workbook.getSheet("Term").forEach(row -> row.forEach(cell -> text.add(cell.toString())));
    return text;
  }
}
