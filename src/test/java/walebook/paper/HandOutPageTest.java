package walebook.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
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
import walebook.lesson.ReadPack;
import walebook.lesson.Run;
import walebook.lesson.Success;

/** A lesson on one page, whatever the lesson. */
class HandOutPageTest {
  static Stream<PackSource> packs() {
    return BuiltInPacks.all().stream();
  }

  private static LessonPack read(PackSource source) {
    return new ReadPack().read(source).value();
  }

  @ParameterizedTest
  @MethodSource("packs")
  void everyPackOfTheProgramFitsOnePageWithItsCautionsWhole(PackSource source) throws IOException {
    LessonPack pack = read(source);
    for (PaperSize size : PaperSize.values()) {
      try (ReadPdf pdf = Slips.pdf(pages -> pages.handOut(size, pack))) {
        assertThat(pdf.pages()).isEqualTo(1);
        String text = pdf.text();
        assertThat(text).contains(pack.about().title()).contains(flat(pack.plan().question()));
        pack.teaching().steps().forEach(step -> assertThat(text).contains(step.heading()));
        pack.teaching().aims().forEach(aim -> assertThat(text).contains(flat(aim)));
        pack.teaching().cautions().forEach(each -> assertThat(text).contains(flat(each.says())));
        pack.success().forEach(each -> assertThat(text).contains(flat(each.says())));
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
  void noLineAnnouncesWhatWasLeftOut(PackSource source) throws IOException {
    try (ReadPdf pdf = Slips.pdf(pages -> pages.handOut(PaperSize.A4, read(source)))) {
      String text = pdf.text();
      if (!text.contains("Shortened to fit")) {
        assertThat(text).contains("Core: ", "Standard: ", "Own work: ");
      }
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

  private static String flat(String text) {
    return text.strip().replaceAll("\\s+", " ");
  }

  @Test
  void anEndlessPackIsShortenedAndSaysSo() throws IOException {
    LessonPack pack = endless(Packs.seam());
    for (PaperSize size : PaperSize.values()) {
      try (ReadPdf pdf = Slips.pdf(pages -> pages.handOut(size, pack))) {
        assertThat(pdf.pages()).isEqualTo(1);
        assertThat(pdf.text())
            .contains("Shortened to fit one page")
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
