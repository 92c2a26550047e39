package walebook.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Names of the world on paper; all names invented. */
class LettersTest {
  private static final PaperSize SIZE = PaperSize.A4;

  private static ReadPdf plan(String who) throws IOException {
    return Slips.pdf(
        pages ->
            pages.plan(
                SIZE,
                new PlanPaper(
                    "Plan",
                    "",
                    "",
                    List.of(
                        new PlanPaper.Part(
                            who,
                            List.of(
                                new PlanPaper.Piece("AAA-AAA", "jersey", "zigzag", false, "")))))));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Çağla Ørsted-Þórðar",
        "Jadwiga Żaglowa",
        "Ελένη Λιμανάκη",
        "Світлана Причальна",
        "Nguyễn Thị Bến",
        "Անի Նավյան",
        "თამარ ნავსადგური",
        "ሰላም ወደብ",
        "张海港",
        "港まりこ",
        "김항구",
        "fi fl ffi office"
      })
  void lettersSetOneByOneAreReadBack(String name) throws IOException {
    try (ReadPdf pdf = plan(name)) {
      assertThat(pdf.text()).contains(name);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "ليلى المرفأ",
        "مریم بندر",
        "דנה הנמל",
        "मीना घाट",
        "রিনা ঘাট",
        "ਸਿਮਰਨ ਘਾਟ",
        "મીના ઘાટ",
        "மீனா துறை",
        "మీనా రేవు",
        "ಮೀನಾ ರೇವು",
        "മീന തുറ",
        "නීලා තොට",
        "มีนา ท่าเรือ",
        "ນາລີ ທ່າເຮືອ",
        "មីនា កំពង់",
        "မီနာ ဆိပ်"
      })
  void lettersThatChangeWithTheirNeighboursAreDrawnAndKept(String name) throws IOException {
    try (ReadPdf pdf = plan(name);
        ReadPdf blank = plan(" ")) {
      String kept = String.join(" ", pdf.keptText());
      for (String part : name.split(" ", -1)) {
        assertThat(kept).contains(part);
      }
      assertThat(pdf.text()).doesNotContain(Faces.LACKING);
      assertThat(dark(pdf.page(0, 72))).isGreaterThan(dark(blank.page(0, 72)) + 20);
    }
  }

  private static int dark(BufferedImage page) {
    int count = 0;
    for (int y = 0; y < page.getHeight(); y++) {
      for (int x = 0; x < page.getWidth(); x++) {
        count += page.getRaster().getSample(x, y, 0) < 128 ? 1 : 0;
      }
    }
    return count;
  }

  @Test
  void arabicLettersJoinAndRunFromTheRight() throws IOException {
    // Joined, the four letters of this name take less room than side by side (Unicode 15, 9.2).
    try (Sheets sheets = Sheets.upright(SIZE)) {
      Ink ink = sheets.page();
      double joined = ink.width("ليلى", Type.BODY);
      double apart = 0;
      for (String letter : List.of("ل", "ي", "ل", "ى")) {
        apart += ink.width(letter, Type.BODY);
      }
      assertThat(joined).isLessThan(apart);
      List<SetText> set = new SplitText(sheets.faces(), false).of("ab ليلى גד cd");
      assertThat(set.stream().map(SetText::text).map(String::strip).collect(Collectors.toList()))
          .containsExactly("ab", "גד", "ليلى", "cd");
    }
  }

  @Test
  void aMarkThatNoComposedLetterHasIsLaidOverItsLetter() throws IOException {
    try (ReadPdf pdf = plan("Ọ̀ṣun")) {
      assertThat(String.join("", pdf.keptText())).contains("Ọ̀");
    }
  }

  @Test
  void anArrowBetweenBeforeAndAfterIsPrinted() throws IOException {
    try (ReadPdf pdf = plan("2 → 2.5")) {
      assertThat(pdf.text()).contains("2 –› 2.5").doesNotContain(Faces.LACKING);
    }
  }

  @Test
  void aLetterThatNoTypefaceHasIsShownAsLackingAndNamed() throws IOException {
    String gothic = "𐌰𐌱";
    byte[] bytes =
        Slips.bytes(
            pages -> {
              Made made = pages.plan(SIZE, new PlanPaper("Plan " + gothic, "", "", List.of()));
              assertThat(made.lacking()).containsExactly("𐌰", "𐌱");
              return made;
            });
    try (ReadPdf pdf = ReadPdf.of(bytes)) {
      assertThat(pdf.text()).contains("Plan [?][?]");
    }
    assertThat(Printable.shows(gothic)).isFalse();
    assertThat(Printable.shows("Ελένη ليلى")).isTrue();
  }

  @Test
  void everyFontIsEmbeddedAndOnlyWhatIsUsedOfIt() throws IOException {
    byte[] bytes =
        Slips.bytes(
            pages ->
                pages.labels(LabelGrid.COMMON.get(0), Slips.of(3, "Ελένη 张海港", "zigzag"), 1, ""));
    try (ReadPdf pdf = ReadPdf.of(bytes)) {
      List<PDFont> fonts = pdf.fonts();
      assertThat(fonts).hasSizeGreaterThanOrEqualTo(3).allMatch(PDFont::isEmbedded);
      assertThat(fonts.stream().map(PDFont::getName))
          .allMatch(name -> name.matches("[A-Z]{6}\\+.*"));
      // The typefaces together weigh over seven megabytes.
      assertThat(bytes.length).isLessThan(200_000);
    }
  }

  @Test
  void everyTypefaceStandsInTheProgram() {
    for (String file : Faces.files()) {
      assertThat(LettersTest.class.getResource(file)).as(file).isNotNull();
    }
  }
}
