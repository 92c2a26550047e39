package walebook.act.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import walebook.act.cloth.LogClothReading;
import walebook.act.piece.Asked;
import walebook.act.piece.PieceField;
import walebook.book.Classroom;
import walebook.desk.MeasuredClass;
import walebook.paper.LabelGrid;
import walebook.paper.PaperSize;
import walebook.paper.ReadPdf;
import walebook.record.Lesson;
import walebook.record.MachineKind;
import walebook.record.Method;
import walebook.record.PieceCode;
import walebook.record.PlannedPiece;
import walebook.record.PlannedReading;
import walebook.record.Pull;
import walebook.record.SeamEnd;
import walebook.record.Student;
import walebook.record.TestPiece;

/** Labels, cards, grid and plan from a book, read back from the files. */
class PrintPiecesTest {
  @TempDir Path folder;

  private ReadPdf labels(PaperClass in, PrintScope scope) throws IOException {
    return labels(in, scope, false);
  }

  private ReadPdf labels(PaperClass in, PrintScope scope, boolean logged) throws IOException {
    Path file = folder.resolve(UUID.randomUUID() + ".pdf");
    new PrintLabels(in.room.book, PaperClass.WORDS, PaperClass.TABLES)
        .print(scope, LabelGrid.COMMON.get(0), 1, logged, PaperClass.file(file))
        .value();
    return ReadPdf.of(file);
  }

  private ReadPdf cards(PaperClass in, PaperSize size) throws IOException {
    Path file = folder.resolve(UUID.randomUUID() + ".pdf");
    new PrintCards(in.room.book, PaperClass.WORDS, PaperClass.TABLES)
        .print(in.scope(null, Naming.NAME), size, PaperClass.file(file))
        .value();
    return ReadPdf.of(file);
  }

  private ReadPdf grid(PaperClass in) throws IOException {
    Path file = folder.resolve(UUID.randomUUID() + ".pdf");
    new PrintWallGrid(in.room.book, PaperClass.WORDS, PaperClass.TABLES)
        .print(in.scope(null, Naming.NAME), PaperSize.A4, PaperClass.file(file))
        .value();
    return ReadPdf.of(file);
  }

  private ReadPdf plan(PaperClass in) throws IOException {
    Path file = folder.resolve(UUID.randomUUID() + ".pdf");
    new PrintPlan(in.room.book, PaperClass.WORDS, PaperClass.TABLES)
        .print(in.scope(null, Naming.NAME), PaperSize.A4, PaperClass.file(file))
        .value();
    return ReadPdf.of(file);
  }

  @Test
  void aPlanOfReadingsIsPrintedWithClothGrainAndHowManyAreMade() throws IOException {
    try (Classroom room = Classroom.in(folder.resolve("readings.walebook"))) {
      Lesson lesson = MeasuredClass.of(room);
      PlannedReading first = MeasuredClass.mine(room, lesson).get(0).planned();
      new LogClothReading(room.book, Classroom.CLOCK)
          .save(
              new LogClothReading.Whose(
                  Objects.requireNonNull(first.clothId()),
                  room.schoolClass.id(),
                  lesson.id(),
                  room.first.id()),
              Map.of("grain", first.grain().key(), "gauge", "100", "stretched", "140"),
              true)
          .value();
      Path file = folder.resolve("readings.pdf");
      new PrintPlan(room.book, PaperClass.WORDS, PaperClass.TABLES)
          .print(
              new PrintScope(room.schoolClass.id(), lesson.id(), null, Naming.NAME),
              PaperSize.A4,
              PaperClass.file(file))
          .value();
      try (ReadPdf pdf = ReadPdf.of(file)) {
        assertThat(pdf.text())
            .contains("Ada Pier", "Bo Quay", "Red jersey", "White rib", "1 of 3")
            .contains("How far does each cloth stretch each way")
            .contains("course-wise (width grain), 3 readings")
            .contains("which way, how often")
            .doesNotContain("No piece is planned");
      }
    }
  }

  @Test
  void aLabelsCodeFindsThePlannedPieceAndLaterTheOneThatCameOfIt() throws IOException {
    try (PaperClass in = PaperClass.in(folder)) {
      PlannedPiece planned = in.plan(in.room.first, 1).get(0);
      try (ReadPdf pdf = labels(in, in.scope(null, Naming.NAME))) {
        LabelGrid grid = LabelGrid.COMMON.get(0);
        String scanned =
            ReadPdf.code(
                pdf.page(0), grid.left(0), grid.top(0), grid.widthMm(), grid.heightMm(), 1);
        String code = PieceCode.read(String.valueOf(scanned));
        assertThat(code).isEqualTo(planned.code());
        assertThat(in.room.book.lessons().plannedByCode(planned.code())).isEqualTo(planned);
        assertThat(pdf.text()).contains("machine ____").contains(PieceCode.spoken(planned.code()));
        TestPiece sewn = in.log(planned, in.room.piece(SeamEnd.GAVE, 150));
        assertThat(in.room.book.pieces().byCode(planned.code())).isEqualTo(sewn);
      }
      try (ReadPdf pdf = labels(in, in.scope(null, Naming.NAME), true)) {
        assertThat(pdf.text())
            .contains(PieceCode.spoken(planned.code()))
            .contains("machine 4")
            .doesNotContain("____");
      }
    }
  }

  @Test
  void studentsAreCalledAsChosen() throws IOException {
    try (PaperClass in = PaperClass.in(folder)) {
      in.plan(in.room.first, 1);
      Student twin = in.enrol("Abel Plank", 1).get(0);
      in.plan(twin, 1);
      in.plan(in.room.second, 1);
      try (ReadPdf pdf = labels(in, in.scope(null, Naming.NAME))) {
        assertThat(pdf.text()).contains("Ada Pier").contains("Bo Quay");
      }
      try (ReadPdf pdf = labels(in, in.scope(null, Naming.CODE))) {
        assertThat(pdf.text()).contains("S01").contains("S02").doesNotContain("Pier");
      }
      try (ReadPdf pdf = labels(in, in.scope(null, Naming.INITIALS))) {
        assertThat(pdf.text())
            .contains("A. P. (S01)")
            .contains("A. P. (" + twin.alias() + ")")
            .contains("B. Q.")
            .doesNotContain("B. Q. (")
            .doesNotContain("Quay");
      }
      try (ReadPdf pdf = labels(in, in.scope(in.room.second, Naming.NAME))) {
        assertThat(pdf.text()).contains("Bo Quay").doesNotContain("Ada");
      }
    }
  }

  @Test
  void aNameThatNoTypefaceHasIsFollowedByItsCode() throws IOException {
    try (PaperClass in = PaperClass.in(folder)) {
      Student gothic = in.enrol("𐌰𐌱", 1).get(0);
      in.plan(gothic, 1);
      Path file = folder.resolve("gothic.pdf");
      var answer =
          new PrintLabels(in.room.book, PaperClass.WORDS, PaperClass.TABLES)
              .print(
                  in.scope(null, Naming.NAME),
                  LabelGrid.COMMON.get(0),
                  1,
                  false,
                  PaperClass.file(file));
      assertThat(answer.problems())
          .extracting(each -> each.code())
          .containsExactly("print.letters");
      try (ReadPdf pdf = ReadPdf.of(file)) {
        assertThat(pdf.text()).contains("[?][?] (" + gothic.alias() + ")");
      }
    }
  }

  @ParameterizedTest
  @EnumSource(PaperSize.class)
  void aCardHasTheFormsFieldsInTheFormsOrder(PaperSize size) throws IOException {
    try (PaperClass in = PaperClass.in(folder)) {
      in.plan(in.room.first, 1);
      try (ReadPdf pdf = cards(in, size)) {
        String text = pdf.text();
        var stitch =
            PaperClass.TABLES.stitchTypes().stream()
                .filter(each -> each.key().equals("304"))
                .findFirst()
                .orElseThrow();
        var asked =
            Asked.of(Method.SEAM, MachineKind.SEWING, stitch, SeamEnd.GAVE, Pull.LOAD, 1, false);
        int at = text.indexOf("A seam that stretches") + "A seam that stretches".length();
        int fields = 0;
        for (PieceField field : PieceField.values()) {
          if (asked.contains(field)) {
            String label = PaperClass.WORDS.say("desk.pieces.field." + field.key());
            int next = text.indexOf(label, at);
            assertThat(next)
                .as(label + " after " + text.substring(0, at))
                .isGreaterThanOrEqualTo(at);
            at = next + label.length();
            fields++;
          }
        }
        assertThat(fields).isEqualTo(asked.size()).isGreaterThan(30);
        assertThat(text)
            .contains("Grey jersey")
            .contains("course-wise")
            .contains("zigzag")
            .contains("stretch")
            .contains("gave")
            .contains("held");
      }
    }
  }

  @ParameterizedTest
  @EnumSource(PaperSize.class)
  void fourCardsStandOnAPageEachWithItsCode(PaperSize size) throws IOException {
    try (PaperClass in = PaperClass.in(folder)) {
      List<PlannedPiece> plan = new ArrayList<>(in.plan(in.room.first, 3));
      plan.addAll(in.plan(in.room.second, 3));
      try (ReadPdf pdf = cards(in, size)) {
        assertThat(pdf.pages()).isEqualTo(2);
        double wide = size.widthMm() / 2;
        double high = size.heightMm() / 2;
        var page = pdf.page(0);
        var copy = ReadPdf.photocopy(page, 3);
        for (int i = 0; i < 4; i++) {
          double x = i % 2 * wide;
          double y = i < 2 ? 0 : high;
          assertThat(ReadPdf.code(page, x, y, wide, high / 4, 1)).isEqualTo(plan.get(i).code());
          assertThat(ReadPdf.code(copy, x, y, wide, high / 4, 0.98)).isEqualTo(plan.get(i).code());
        }
        for (double[] letter : pdf.letters(0)) {
          assertThat(letter[2]).isLessThan(size.widthMm() - 5);
          assertThat(letter[3]).isLessThan(size.heightMm() - 5);
        }
      }
    }
  }

  @Test
  void onlyPiecesThatAreNotLoggedGetALabelUnlessAllAreWanted() throws IOException {
    try (PaperClass in = PaperClass.in(folder)) {
      List<PlannedPiece> plan = in.plan(in.room.first, 2);
      PrintScope scope = in.scope(null, Naming.NAME);
      in.log(plan.get(0), in.room.piece(SeamEnd.HELD, 160));
      try (ReadPdf open = labels(in, scope);
          ReadPdf all = labels(in, scope, true)) {
        assertThat(open.text())
            .contains(PieceCode.spoken(plan.get(1).code()))
            .doesNotContain(PieceCode.spoken(plan.get(0).code()));
        assertThat(all.text())
            .contains(PieceCode.spoken(plan.get(0).code()), PieceCode.spoken(plan.get(1).code()));
      }
      in.log(plan.get(1), in.room.piece(SeamEnd.HELD, 160));
      try (ReadPdf none = labels(in, scope)) {
        assertThat(none.pages()).isEqualTo(1);
        assertThat(none.text()).contains("Every piece here is logged already");
      }
    }
  }

  @Test
  void onlyPiecesThatAreNotLoggedGetACard() throws IOException {
    try (PaperClass in = PaperClass.in(folder)) {
      List<PlannedPiece> plan = in.plan(in.room.first, 2);
      in.log(plan.get(0), in.room.piece(SeamEnd.HELD, 160));
      try (ReadPdf pdf = cards(in, PaperSize.A4)) {
        assertThat(pdf.text())
            .contains(PieceCode.spoken(plan.get(1).code()))
            .doesNotContain(PieceCode.spoken(plan.get(0).code()));
      }
    }
  }

  @Test
  void fortyStudentsOfTwelvePiecesAllStandOnGridPlanCardsAndLabels() throws IOException {
    try (PaperClass in = PaperClass.in(folder)) {
      Map<String, String> whose = new java.util.HashMap<>();
      for (Student each : in.enrol("Wilhelmina-Charlotte Hafenstraßner", 38)) {
        in.plan(each, 12).forEach(piece -> whose.put(piece.code(), each.name()));
      }
      in.plan(in.room.first, 12).forEach(piece -> whose.put(piece.code(), "Ada Pier"));
      in.plan(in.room.second, 12).forEach(piece -> whose.put(piece.code(), "Bo Quay"));
      assertThat(whose).hasSize(480);
      try (ReadPdf grid = grid(in);
          ReadPdf plan = plan(in);
          ReadPdf cards = cards(in, PaperSize.LETTER);
          ReadPdf labels = labels(in, in.scope(null, Naming.CODE))) {
        assertThat(cards.pages()).isEqualTo(120);
        assertThat(labels.pages()).isEqualTo(23);
        for (ReadPdf each : List.of(grid, plan, cards, labels)) {
          String text = each.text();
          assertThat(whose.keySet()).allMatch(code -> text.contains(PieceCode.spoken(code)));
        }
        for (int page = 0; page < grid.pages(); page++) {
          // Every page has its head again.
          assertThat(grid.text(page)).contains("student").contains("piece 1");
          for (double[] letter : grid.letters(page)) {
            assertThat(letter[0]).isGreaterThan(10);
            assertThat(letter[2]).isLessThan(297 - 10);
            assertThat(letter[3]).isLessThan(210 - 8);
          }
        }
        for (int page = 0; page < plan.pages(); page++) {
          assertThat(plan.text(page)).contains("code").contains("settings");
        }
      }
    }
  }

  @Test
  void anEmptyClassGetsAPageThatSaysSo() throws IOException {
    try (PaperClass in = PaperClass.in(folder)) {
      try (ReadPdf grid = grid(in);
          ReadPdf plan = plan(in);
          ReadPdf cards = cards(in, PaperSize.A4);
          ReadPdf labels = labels(in, in.scope(null, Naming.NAME))) {
        assertThat(plan.text()).contains("No piece is planned here yet");
        assertThat(labels.text()).contains("No piece is planned here yet");
        assertThat(cards.text()).contains("No planned piece is left");
        assertThat(grid.text()).contains("Ada Pier");
        assertThat(grid.pages()).isEqualTo(1);
      }
    }
  }

  @Test
  void thePlanSaysWhatTheClassWantsToFindOut() throws IOException {
    try (PaperClass in = PaperClass.in(folder)) {
      List<PlannedPiece> pieces = in.plan(in.room.first, 2);
      in.log(pieces.get(1), in.room.piece(SeamEnd.GAVE, 150));
      try (ReadPdf plan = plan(in)) {
        assertThat(plan.text())
            .contains("Which zigzag follows the cloth and still lies flat?")
            .contains("Control: zigzag, width 1, length 2.5; needle stretch 75")
            .contains("logged");
      }
    }
  }

  @Test
  void sheetsAreOfTheirStandardsSize() throws IOException {
    // A4 is 210 x 297 mm (ISO 216); Letter 8.5 x 11 in (ANSI/ASME Y14.1).
    try (PaperClass in = PaperClass.in(folder)) {
      in.plan(in.room.first, 1);
      try (ReadPdf a4 = cards(in, PaperSize.A4);
          ReadPdf letter = cards(in, PaperSize.LETTER);
          ReadPdf across = grid(in)) {
        assertThat(a4.sizeMm(0)[0]).isCloseTo(210, within(0.1));
        assertThat(a4.sizeMm(0)[1]).isCloseTo(297, within(0.1));
        assertThat(letter.sizeMm(0)[0]).isCloseTo(8.5 * 25.4, within(0.1));
        assertThat(letter.sizeMm(0)[1]).isCloseTo(11 * 25.4, within(0.1));
        assertThat(across.sizeMm(0)[0]).isCloseTo(297, within(0.1));
      }
    }
  }
}
