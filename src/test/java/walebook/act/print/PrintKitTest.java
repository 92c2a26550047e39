package walebook.act.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import walebook.act.lesson.KitCloth;
import walebook.act.lesson.KitTyped;
import walebook.act.lesson.ReadLimits;
import walebook.act.lesson.TakeUpLesson;
import walebook.act.lesson.TakenUp;
import walebook.act.lesson.WorkOutKit;
import walebook.book.Classroom;
import walebook.kit.Kit;
import walebook.kit.KitLine;
import walebook.lesson.LessonPack;
import walebook.lesson.Packs;
import walebook.paper.PaperSize;
import walebook.paper.ReadPdf;
import walebook.problem.Answer;
import walebook.quantity.Unit;
import walebook.record.Lesson;

/** The list to shop by, read back from its file. */
class PrintKitTest {
  private static final LessonPack SEAM = Packs.seam();

  @TempDir Path folder;

  private static Kit kit(Map<String, KitCloth> cloths) {
    KitTyped typed =
        new KitTyped(
            "12",
            "10",
            "1 cm",
            List.of("b=90 cm"),
            List.of("a=-5/-3"),
            List.of("a=8.50", "thread=0.02"));
    return WorkOutKit.of(SEAM, cloths, typed, PaperClass.TABLES, Unit.CM, 1).value();
  }

  @ParameterizedTest
  @EnumSource(PaperSize.class)
  void everyLineEveryPieceAndWhatItRestsOnIsPrinted(PaperSize size) throws IOException {
    KitCloth jersey = new KitCloth("Möwen-Jersey Ωμέγα", 1500.0, null, null, 0.6);
    Kit kit = kit(Map.of("a", jersey));
    PrintKit.Head head = new PrintKit.Head("Strips and seams", "Monday evening, 2026-10-05");
    Path file = folder.resolve(size.key() + ".pdf");
    Printed printed =
        new PrintKit(PaperClass.WORDS)
            .print(kit, SEAM, head, Unit.CM, size, PaperClass.file(file))
            .value();
    try (ReadPdf pdf = ReadPdf.of(file)) {
      String text = pdf.text();
      assertThat(printed.pages()).isEqualTo(pdf.pages());
      assertThat(text)
          .contains("Kit: Strips and seams", "Monday evening", "For 12 students")
          .contains("Möwen-Jersey Ωμέγα, 150 cm wide", "Stretch needle, Nm 75, new")
          .contains("264 m") // 20 m of thread, 12 students and a tenth more
          .contains("5.28", "Together")
          .contains("10 % to spare", "−5 %", "−3 %", "1 cm is left between two pieces")
          .contains("grain: along the columns of loops", "20 cm across and 10 cm along");
      for (KitLine line : kit.lines()) {
        for (String word : PaperClass.WORDS.say(line.what()).split("[ ,]+", -1)) {
          assertThat(text).contains(word);
        }
      }
      for (String each : SEAM.needs().forTheRoom()) {
        assertThat(text.replaceAll("\\s+", " ")).contains(each);
      }
      // 106 strips of one cloth and 53 of the other, each with its letter.
      assertThat(text.lines().flatMap(line -> line.chars().mapToObj(Character::toString)))
          .filteredOn("A"::equals)
          .hasSizeGreaterThan(159);
      assertThat(pdf.fonts()).isNotEmpty().allMatch(font -> font.isEmbedded());
      assertThat(pdf.sizeMm(0)[0])
          .isCloseTo(size.widthMm(), org.assertj.core.api.Assertions.within(0.1));
      for (int page = 0; page < pdf.pages(); page++) {
        for (double[] letter : pdf.letters(page)) {
          assertThat(letter[0]).isGreaterThan(10);
          assertThat(letter[2]).isLessThan(size.widthMm() - 10);
          assertThat(letter[3]).isLessThan(size.heightMm() - 8);
        }
      }
    }
  }

  @Test
  void aLessonsKitTakesItsClassAndTheClothsOfItsPlan() throws IOException {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      Lesson lesson = TakenUp.seam(room);
      Path file = folder.resolve("lesson.pdf");
      PrintScope scope = new PrintScope(room.schoolClass.id(), lesson.id(), null, Naming.NAME);
      PrintPaper.Wanted wanted =
          new PrintPaper.Wanted(PrintPaper.Kind.KIT, scope, "a4", Map.of(), 1, false);
      new PrintPaper(room.book, PaperClass.WORDS, PaperClass.TABLES)
          .print(wanted, file, share -> {})
          .value();
      try (ReadPdf pdf = ReadPdf.of(file)) {
        assertThat(pdf.text())
            .contains(
                "Kit: A seam that stretches",
                "For 2 students",
                "2026-10-05",
                "Grey jersey, 150 cm wide")
            .doesNotContain("Ada", "width is not known");
      }
    }
  }

  @Test
  void aClassWithoutALessonOrWithoutStudentsIsToldSo() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      PrintPaper print = new PrintPaper(room.book, PaperClass.WORDS, PaperClass.TABLES);
      PrintScope none = new PrintScope(room.schoolClass.id(), null, null, Naming.NAME);
      Path file = folder.resolve("none.pdf");
      assertThat(said(print, none, file)).contains("no lesson yet");
      Lesson lesson =
          new TakeUpLesson(room.book, Classroom.CLOCK)
              .takeUp(
                  Packs.named("do-we-measure-alike"),
                  room.schoolClass.id(),
                  LocalDate.of(2026, 10, 5),
                  Map.of("a", room.cloth.id(), "b", room.cloth.id(), "c", room.cloth.id()),
                  ReadLimits.Typed.NOTHING,
                  1,
                  true)
              .value();
      room.book
          .enrolments()
          .studentsOf(room.schoolClass.id())
          .forEach(
              each ->
                  room.book
                      .enrolments()
                      .leave(room.schoolClass.id(), each.id(), LocalDate.of(2026, 10, 1)));
      PrintScope empty = new PrintScope(room.schoolClass.id(), lesson.id(), null, Naming.NAME);
      assertThat(said(print, empty, file)).contains("0 students: a kit is for at least one");
      assertThat(file).doesNotExist();
    }
  }

  private static String said(PrintPaper print, PrintScope scope, Path file) {
    Answer<Printed> answer =
        print.print(
            new PrintPaper.Wanted(PrintPaper.Kind.KIT, scope, "a4", Map.of(), 1, false),
            file,
            share -> {});
    assertThat(answer.isGood()).isFalse();
    return PaperClass.WORDS.say(answer.problems().get(0));
  }
}
