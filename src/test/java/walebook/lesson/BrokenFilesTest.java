package walebook.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;

/** What can be wrong with a pack's folder, its text and its pictures. */
class BrokenFilesTest {
  private static final ReadPack READ = new ReadPack();
  private static final String GOOD_SVG =
      "<svg xmlns='http://www.w3.org/2000/svg'><title>t</title><desc>d</desc>%s</svg>";

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          ![a seam](../secret.png)           | picture-outside
          ![a seam](/etc/passwd.png)         | picture-outside
          ![a seam](https://example.org/a.png) | picture-outside
          ![a seam](..\\\\secret.png)         | picture-outside
          ![a seam](%2e%2e%2fsecret.png)     | picture-outside
          ![a seam](file:a.png)              | picture-outside
          ![a seam](seam.gif)                | picture-kind
          ![a seam](<.hidden.png>)           | picture-kind
          ![a seam](no-such.png)             | picture-missing
          ![a seam](test-peice.svg)          | picture-missing-near
          ![](test-piece.svg)                | picture-alt
          **![a seam](test-piece.svg)**      | picture-inside
          <b>bold</b> words                  | html
          <div>block</div>                   | html
          """)
  void aTextThatCantBeShownIsRefusedAtItsLine(String added, String code) {
    String text = GoodPack.text("lesson.md") + "\n" + added + "\n";
    Problem problem = only(GoodPack.with("lesson.md", text));
    assertThat(problem.code()).isEqualTo("pack." + code);
    assertThat(((Place.Spot) problem.place()).line()).isEqualTo((int) text.lines().count());
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          <script>alert(1)</script>                         | svg-unsafe
          <image href='a.png'/>                             | svg-unsafe
          <use href='other.svg#a'/>                         | svg-unsafe
          <rect onclick='x()'/>                             | svg-unsafe
          <rect fill='url(http://example.org/a)'/>          | svg-unsafe
          <style>@import 'a.css';</style>                   | svg-unsafe
          <a href='http://example.org/'><text>x</text></a>  | svg-unsafe
          <?xml-stylesheet href='a.css'?>                   | svg-unsafe
          <g>                                               | svg-broken
          &unknown;                                         | svg-broken
          """)
  void aDrawingThatIsMoreThanADrawingIsRefused(String inside, String code) {
    String svg = GOOD_SVG.formatted(inside);
    assertThat(codes(GoodPack.with("test-piece.svg", svg))).contains("pack." + code);
  }

  @Test
  void aDrawingNeedsNothingFromOutside() {
    String laughs =
        "<!DOCTYPE svg [<!ENTITY a 'ha'><!ENTITY b '&a;&a;'>"
            + "<!ENTITY c SYSTEM 'file:///etc/passwd'>]>";
    String svg = laughs + GOOD_SVG.formatted("<text>&b;&c;</text>");
    assertThat(codes(GoodPack.with("test-piece.svg", svg))).contains("pack.svg-unsafe");
    assertThat(codes(GoodPack.with("test-piece.svg", "<svg/>")))
        .containsExactly("pack.svg-untold", "pack.svg-untold");
    assertThat(codes(GoodPack.with("test-piece.svg", "<html/>"))).contains("pack.svg-root");
    assertThat(codes(GoodPack.with("test-piece.svg", ""))).contains("pack.svg-broken");
  }

  @Test
  void everyMissingFileIsSaid() {
    assertThat(codes(GoodPack.without("lesson.md"))).containsExactly("pack.file-missing");
    assertThat(codes(GoodPack.without("pack.yaml"))).containsExactly("pack.file-missing");
    assertThat(codes(GoodPack.without("test-piece.png"))).containsExactly("pack.picture-no-png");
    assertThat(codes(new PackBytes("x", Map.of())))
        .containsExactly("pack.file-missing", "pack.file-missing");
  }

  @Test
  void picturesAreHeldToTheirLimits() {
    assertThat(codes(GoodPack.with("big.png", new byte[2 * 1024 * 1024 + 1])))
        .containsExactly("pack.too-big");
    assertThat(codes(GoodPack.with("test-piece.png", new byte[] {1, 2, 3})))
        .containsExactly("pack.picture-broken");
    byte[] wide = GoodPack.files().getOrDefault("test-piece.png", new byte[0]);
    wide[17] = 1; // width of a PNG: four bytes from the seventeenth (ISO/IEC 15948, 11.2.2)
    assertThat(codes(GoodPack.with("test-piece.png", wide))).contains("pack.picture-side");
  }

  @Test
  void aTextNeedsStepsThatThePackNames() {
    assertThat(codes(GoodPack.with("lesson.md", "Only words."))).containsExactly("pack.no-steps");
    String more = GoodPack.text("lesson.md") + "\n## One more step\n\nWords.\n";
    assertThat(codes(GoodPack.with("lesson.md", more))).containsExactly("pack.step-missing");
    String[] parts = GoodPack.text("lesson.md").split("(?m)^(?=## )", 4);
    String turned = parts[0] + parts[2] + parts[1] + parts[3];
    assertThat(codes(GoodPack.with("lesson.md", turned))).containsExactly("pack.step-order");
    String deep = GoodPack.text("lesson.md") + "\n" + "> ".repeat(20) + "deep\n";
    assertThat(codes(GoodPack.with("lesson.md", deep))).contains("pack.text-deep");
    assertThat(codes(GoodPack.with("lesson.md", "x".repeat(300_000))))
        .containsExactly("pack.too-big");
  }

  @Test
  void aStrayFileIsRemarkedOnAndLeftOut() {
    Answer<LessonPack> answer =
        READ.read(GoodPack.with("notes.txt", "buy needles".getBytes(StandardCharsets.UTF_8)));
    assertThat(answer.isGood()).isTrue();
    assertThat(answer.problems())
        .singleElement()
        .satisfies(each -> assertThat(each.refuses()).isFalse());
    String plain =
        READ.read(new PackBytes(GoodPack.NAME, GoodPack.files())).value().files().contentHash();
    assertThat(answer.value().files().contentHash()).isEqualTo(plain);
  }

  @Test
  void manyMistakesAreToldAtOnce() {
    Map<String, byte[]> files = GoodPack.files();
    String yaml = GoodPack.text("pack.yaml").replace("format: 1", "format: 7");
    files.put("pack.yaml", yaml.replace("slot: b", "slot: c").getBytes(StandardCharsets.UTF_8));
    files.put("lesson.md", "## Alone <i>x</i>\n".getBytes(StandardCharsets.UTF_8));
    files.remove("ten-stitches.svg");
    assertThat(codes(new PackBytes(GoodPack.NAME, files)))
        .contains("pack.format", "pack.slot-unknown", "pack.html", "pack.step-unknown");
  }

  @Test
  void aFolderThatIsNoneIsSaid(@TempDir Path folder) throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "x");
    assertThat(codes(new PackFolder(file))).containsExactly("pack.no-folder");
    assertThat(codes(new PackFolder(folder.resolve("none")))).containsExactly("pack.no-folder");
    for (int i = 0; i <= PackLimits.FILES; i++) {
      Files.writeString(folder.resolve("n" + i + ".md"), "x");
    }
    assertThat(codes(new PackFolder(folder))).containsExactly("pack.too-many-files");
  }

  @Test
  void aLinkOutOfTheFolderIsNotFollowed(@TempDir Path folder) throws IOException {
    Path secret = Files.writeString(folder.resolve("secret"), "## secret");
    Path pack = Files.createDirectory(folder.resolve("pack"));
    Files.createSymbolicLink(pack.resolve("lesson.md"), secret);
    assertThat(new PackFolder(pack).files()).isEmpty();
  }

  private static List<String> codes(PackSource source) {
    return READ.read(source).problems().stream().map(Problem::code).toList();
  }

  private static Problem only(PackSource source) {
    List<Problem> problems = READ.read(source).problems();
    assertThat(problems).as(problems.toString()).isNotEmpty();
    return problems.get(0);
  }
}
