package walebook.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import walebook.lesson.Block;
import walebook.lesson.BuiltInPacks;
import walebook.lesson.LessonPack;
import walebook.lesson.LessonText;
import walebook.lesson.PackSource;
import walebook.lesson.Packs;
import walebook.lesson.Plan;
import walebook.lesson.ReadPack;
import walebook.lesson.Run;
import walebook.lesson.Success;
import walebook.lesson.Tiers;

/** A lesson on one page, whatever the lesson. */
class HandOutPageTest {
  static Stream<PackSource> packs() {
    return BuiltInPacks.all().stream();
  }

  private static LessonPack read(PackSource source) {
    return new ReadPack().read(source).value();
  }

  private static HandOutPaper handOut(LessonPack pack) {
    return new HandOutPaper(pack, Map.of());
  }

  @ParameterizedTest
  @MethodSource("packs")
  void everyPackOfTheProgramFitsOnePageWithItsCautionsWhole(PackSource source) throws IOException {
    LessonPack pack = read(source);
    for (PaperSize size : PaperSize.values()) {
      try (ReadPdf pdf = Slips.pdf(pages -> pages.handOut(size, handOut(pack)))) {
        assertThat(pdf.pages()).isEqualTo(1);
        String text = pdf.text();
        assertThat(text).contains(pack.about().title()).contains(flat(pack.plan().question()));
        pack.teaching().steps().forEach(step -> assertThat(text).contains(step.heading()));
        pack.teaching().aims().forEach(aim -> assertThat(text).contains(flat(aim)));
        pack.teaching().cautions().forEach(each -> assertThat(text).contains(flat(each.says())));
        pack.success().forEach(each -> assertThat(text).contains(flat(each.says())));
        assertThat(text).doesNotContain("…");
        Tiers tiers = pack.plan().tiers();
        assertThat(text)
            .contains("Core: " + flat(tiers.core().says()))
            .contains("Standard: " + flat(tiers.standard().says()))
            .contains("Own work: " + flat(tiers.own().says()));
        for (LessonText.Step step : pack.text().steps()) {
          String after =
              text.substring(text.indexOf(step.heading() + " (") + step.heading().length());
          assertThat(after)
              .as(step.heading())
              .containsPattern("^ \\(\\d+ min\\) (a\\) |• )?[\\p{Lu}]");
        }
        assertThat(unknownSentences(text, pack)).isEmpty();
        // The house's paper sets nothing smaller than 8 points.
        assertThat(pdf.sizes()).isNotEmpty().allMatch(points -> points >= 7.99);
        assertThat(pdf.images()).isGreaterThanOrEqualTo(2);
        for (double[] letter : pdf.letters(0)) {
          assertThat(letter[2]).isLessThan(size.widthMm() - Flow.MARGIN + 0.5);
          assertThat(letter[3]).isLessThan(size.heightMm() - Flow.MARGIN + 3);
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("packs")
  void theRoomsClothsStandForThePlansLetters(PackSource source) throws IOException {
    LessonPack pack = read(source);
    Map<String, String> cloths = new HashMap<>();
    pack.plan().cloths().forEach(each -> cloths.put(each.slot(), "Pier $1 \\ " + each.slot()));
    HandOutPaper paper = new HandOutPaper(pack, cloths);
    try (ReadPdf pdf = Slips.pdf(pages -> pages.handOut(PaperSize.A4, paper))) {
      String text = pdf.text();
      assertThat(pdf.pages()).isEqualTo(1);
      assertThat(text).doesNotContain("…");
      assertThat(text.substring(text.indexOf("What for")))
          .doesNotContainPattern("[Cc]loth [A-D]\\b");
      for (Plan.ClothSlot each : pack.plan().cloths()) {
        assertThat(text).contains("Pier $1 \\ " + each.slot() + " (" + flat(each.says()) + ")");
      }
    }
  }

  @ParameterizedTest
  @MethodSource("packs")
  void noLineAnnouncesWhatWasLeftOut(PackSource source) throws IOException {
    try (ReadPdf pdf = Slips.pdf(pages -> pages.handOut(PaperSize.A4, handOut(read(source))))) {
      String text = pdf.text();
      // A colon at the end of a text is followed by the next point's letter or number.
      assertThat(text).doesNotContainPattern(":\\s*([b-z]\\)|[0-9]+\\. |•)");
    }
  }

  @Test
  void aBoxOfTheWallGridNamesItsCloth() throws IOException {
    WallGrid grid =
        new WallGrid(
            "Seams",
            List.of(
                new WallGrid.Row(
                    "Ada Pier",
                    List.of(new WallGrid.Cell("AB C", "zigzag", "Grey jersey", false)))));
    try (ReadPdf pdf = Slips.pdf(pages -> pages.wallGrid(PaperSize.A4, grid))) {
      assertThat(pdf.text()).contains("Grey jersey");
    }
  }

  /** What stands between two ends of sentences and is no whole piece of the steps' own text. */
  private static List<String> unknownSentences(String text, LessonPack pack) {
    StringBuilder all = new StringBuilder();
    pack.text().steps().forEach(step -> all.append(written(step.blocks())));
    String own = flat(all.toString()).replaceAll("[.;,:?!]", "");
    String steps =
        text.substring(text.indexOf("Step by step") + 12, text.indexOf("Done when"))
            .replaceAll("\\d+\\. [^.()]+\\(\\d+ min\\)", "•");
    List<String> unknown = new ArrayList<>();
    for (String point : steps.split(" (?=[a-z]\\) )|•", -1)) {
      String says = point.strip().replaceFirst("^[a-z]\\) ", "");
      String end = says.replaceAll("[\"”)]$", "");
      if (!says.isEmpty()) {
        boolean whole = end.matches("(?s).*[.?!%:*]") || own.endsWith(end);
        String plain = says.replaceAll("[.;,:?!]", "");
        if (!whole || !own.contains(plain.substring(0, Math.min(24, plain.length())))) {
          unknown.add(says);
        }
      }
    }
    return unknown;
  }

  /** Everything a step's text says, block by block. */
  private static String written(List<Block> blocks) {
    StringBuilder all = new StringBuilder();
    for (Block each : blocks) {
      if (each instanceof Block.Paragraph paragraph) {
        all.append(Run.plain(paragraph.runs())).append(' ');
      } else if (each instanceof Block.Items list) {
        list.items().forEach(item -> all.append(written(item)));
      }
    }
    return all.toString();
  }

  private static String flat(String text) {
    return text.strip().replaceAll("\\s+", " ");
  }

  @Test
  void anEndlessPackIsShortenedAndSaysSo() throws IOException {
    LessonPack pack = endless(Packs.seam());
    for (PaperSize size : PaperSize.values()) {
      try (ReadPdf pdf = Slips.pdf(pages -> pages.handOut(size, handOut(pack)))) {
        assertThat(pdf.pages()).isEqualTo(1);
        assertThat(pdf.text())
            .doesNotContain("…")
            .contains("Chosen to fit one page: the rest stands in the lesson.")
            .contains("There are more cautions than fit here");
      }
    }
  }

  private static LessonPack endless(LessonPack pack) {
    String wordy = "Sew and measure and write it down, and then once more. ".repeat(30);
    List<String> many = new ArrayList<>();
    List<LessonPack.PackCaution> cautions = new ArrayList<>();
    List<LessonPack.Figure> figures = new ArrayList<>();
    List<LessonText.Step> steps = new ArrayList<>();
    List<Success> success = new ArrayList<>();
    for (int i = 0; i < 60; i++) {
      many.add(i + " " + wordy);
      cautions.add(new LessonPack.PackCaution("iron", i + " " + wordy));
      figures.add(new LessonPack.Figure(i + " " + wordy, wordy));
      success.add(new Success(Success.Kind.LOGGED_AT_LEAST, 1, wordy));
      Block text = new Block.Paragraph(List.of(new Run(wordy, Run.Style.PLAIN)));
      Block list = new Block.Items(1, java.util.Collections.nCopies(20, List.of(text)));
      steps.add(new LessonText.Step("Step " + i + " " + wordy, i + 1, List.of(text, list)));
    }
    LessonPack.About about =
        new LessonPack.About("endless", "1", "Endless " + wordy, wordy.repeat(5), 150);
    return new LessonPack(
        about,
        new LessonPack.Teaching(List.of(), many, cautions, many, List.of(), "", figures),
        pack.needs(),
        pack.log(),
        pack.measure(),
        pack.plan(),
        success,
        new LessonText("Endless", List.of(), steps),
        pack.files());
  }

  @Test
  void aPictureThatCannotBeReadIsLeftOut() throws IOException {
    try (Sheets sheets = Sheets.upright(PaperSize.A4)) {
      assertThat(sheets.image(new byte[] {1, 2, 3}, "broken.png")).isNull();
    }
  }
}
