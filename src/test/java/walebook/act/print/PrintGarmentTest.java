package walebook.act.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.decide.AnswerGarment;
import walebook.book.Classroom;
import walebook.book.Ids;
import walebook.garment.Check;
import walebook.garment.GarmentAnswers;
import walebook.paper.PaperSize;
import walebook.paper.ReadPdf;
import walebook.record.GarmentEdge;
import walebook.record.GarmentGirth;
import walebook.record.GarmentOpening;
import walebook.record.GarmentSewing;
import walebook.record.GarmentSheet;
import walebook.record.Grain;
import walebook.record.MachineKind;
import walebook.record.PatternAsks;
import walebook.record.SeamEnd;
import walebook.record.StitchChoice;
import walebook.words.Words;

/** A garment's answers on one page, and what is private kept off it. */
class PrintGarmentTest {
  private static final Map<String, Double> BODY =
      Map.of("chest", 903.0, "waist", 721.0, "upper-arm", 291.0, "head", 573.0, "hand", 211.0);

  @TempDir Path folder;

  private static UUID sheet(PaperClass in, Map<String, Double> body) {
    Classroom room = in.room;
    for (Grain grain : new Grain[] {Grain.WALE, Grain.COURSE}) {
      room.book.clothLog().add(room.reading(grain, grain == Grain.WALE ? 120 : 150));
    }
    room.book.pieces().add(room.piece(SeamEnd.GAVE, 128));
    StitchChoice stitch = new StitchChoice(MachineKind.SEWING, "304", 2.5, 2.5);
    GarmentSheet sheet =
        new GarmentSheet(
            Ids.next(),
            room.first.id(),
            "Grey top",
            "fitted-top",
            room.cloth.id(),
            Grain.COURSE,
            "day",
            new PatternAsks(100.0, 130.0, 15.0),
            new GarmentSewing(stitch, 6.0, false, false),
            List.of(new GarmentGirth("chest", 800, 2)),
            List.of(
                new GarmentOpening(
                    "neckline",
                    "head",
                    400.0,
                    0,
                    "crew",
                    0.9,
                    30.0,
                    List.of(new GarmentEdge("seam", stitch, null)))),
            "",
            Classroom.FRESH);
    room.book.garments().add(sheet);
    room.book.garments().keepBody(sheet.id(), body);
    return sheet.id();
  }

  private ReadPdf print(PaperClass in, UUID sheet, boolean girths, PaperSize size)
      throws IOException {
    Path file = folder.resolve(UUID.randomUUID() + ".pdf");
    new PrintGarment(in.room.book, PaperClass.WORDS, PaperClass.TABLES)
        .print(sheet, girths, size, PaperClass.file(file))
        .value();
    return ReadPdf.of(file);
  }

  @Test
  void answersWhatToDoAndWeakestLinksStandOnOnePage() throws IOException {
    try (PaperClass in = PaperClass.in(folder)) {
      UUID sheet = sheet(in, BODY);
      for (PaperSize size : PaperSize.values()) {
        try (ReadPdf pdf = print(in, sheet, true, size)) {
          assertThat(pdf.pages()).isEqualTo(1);
          assertThat(pdf.text())
              .contains("Grey top")
              .contains("Grey jersey")
              .contains("not met")
              .contains("What to do, in this order")
              .contains("Weakest link")
              .doesNotContain("(0 test pieces", "[?]")
              .contains("neckline")
              .contains("Private. Girths of the body")
              .contains("903 mm")
              .contains("573 mm");
        }
      }
    }
  }

  @Test
  void aClothIsMeasuredNotSewnAndReckoningIsSaid() throws IOException {
    try (PaperClass in = PaperClass.in(folder)) {
      GarmentSheet whole = Objects.requireNonNull(in.room.book.garments().find(sheet(in, BODY)));
      try (ReadPdf pdf = printed(in, with(whole, List.of()))) {
        assertThat(pdf.text())
            .contains("Weakest link: cloth, stretches by")
            .doesNotContain("sewn by 0")
            .doesNotContain("reckoned only");
      }
      GarmentEdge stated = new GarmentEdge("elastic", null, 90.0);
      try (ReadPdf pdf = printed(in, with(whole, List.of(stated)))) {
        assertThat(pdf.text()).contains("met, reckoned only: sew the test piece");
      }
    }
  }

  private ReadPdf printed(PaperClass in, GarmentSheet sheet) throws IOException {
    Path file = folder.resolve(UUID.randomUUID() + ".pdf");
    new PrintGarment(in.room.book, PaperClass.WORDS, PaperClass.TABLES)
        .print(sheet, BODY, true, PaperSize.A4.key(), PaperClass.file(file))
        .value();
    return ReadPdf.of(file);
  }

  /** A neckline of 50 cm that a head of 573 mm passes: 14.6 % and the margin of 10 points. */
  private static GarmentSheet with(GarmentSheet sheet, List<GarmentEdge> edges) {
    return new GarmentSheet(
        sheet.id(),
        null,
        sheet.name(),
        sheet.kind(),
        sheet.clothId(),
        sheet.grainRound(),
        sheet.wear(),
        sheet.pattern(),
        new GarmentSewing(sheet.sewing().stitch(), 15.0, false, false),
        sheet.girths(),
        List.of(new GarmentOpening("neckline", "head", 500.0, 0, "crew", null, null, edges)),
        "",
        sheet.stamp());
  }

  private static GarmentAnswers answers(PaperClass in, UUID sheet) {
    return new AnswerGarment(in.room.book, PaperClass.TABLES)
        .answer(Objects.requireNonNull(in.room.book.garments().find(sheet)), BODY);
  }

  @Test
  void withoutBeingAskedForNothingTellsAGirth() throws IOException {
    try (PaperClass in = PaperClass.in(folder)) {
      UUID sheet = sheet(in, BODY);
      String open;
      try (ReadPdf pdf = print(in, sheet, true, PaperSize.A4)) {
        open = pdf.text();
      }
      try (ReadPdf pdf = print(in, sheet, false, PaperSize.A4)) {
        String text = pdf.text();
        assertThat(text).contains("left out here").contains("not met").contains("Weakest link");
        // 15 mm sewn at 6: 9 mm at each of four edges; two allowances tell no body.
        assertThat(text.replaceAll("\\s+", " "))
            .contains("The girth grows by 36 mm. Trim 9 mm from each edge");
        // What tells no girth is said: which way in full, the others by how they come out.
        String flat = text.replaceAll("\\s+", " ");
        for (Check check : answers(in, sheet).checks()) {
          if (check.kind() == Check.Kind.WAY) {
            assertThat(flat).contains(Words.english().say(check.working().says()));
          }
          assertThat(Words.english().say(check.saysWithoutGirths())).isNotBlank();
          assertThat(flat).contains(Words.english().say(check.saysWithoutGirths()));
        }
        for (double girth : BODY.values()) {
          String mm = Long.toString(Math.round(girth));
          assertThat(text)
              .doesNotContain(mm)
              .doesNotContain(mm.substring(0, 2) + "." + mm.charAt(2));
        }
        // What the head needs of the neckline would tell the head: (573 - 400) / 400 is 43.25 %,
        // and the opening is 418 mm or so as sewn; no share beside the cloth's and the pieces' own.
        assertThat(open).contains("must").isNotEqualTo(text);
        assertThat(text).doesNotContain("worn strain").doesNotContain("has to stretch by");
      }
    }
  }

  @Test
  void aBodyThatIsNotKeptIsNotKnownYet() throws IOException {
    try (PaperClass in = PaperClass.in(folder)) {
      UUID sheet = sheet(in, Map.of());
      try (ReadPdf pdf = print(in, sheet, false, PaperSize.A4)) {
        assertThat(pdf.text())
            .contains("Not known yet")
            .contains("body girth and finished girth are both needed")
            .doesNotContain("private");
      }
    }
  }
}
