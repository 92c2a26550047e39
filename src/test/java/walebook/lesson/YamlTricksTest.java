package walebook.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.words.Words;

/** YAML that tries tricks is refused, quickly, where it stands. */
class YamlTricksTest {
  private static final ReadPack READ = new ReadPack();

  @Test
  void aliasesThatExplodeAreRefusedAtTheFirst() {
    StringBuilder laughs = new StringBuilder("a0: &a0 [ha, ha, ha, ha, ha, ha, ha, ha, ha]\n");
    for (int i = 1; i < 12; i++) {
      String before = "*a" + (i - 1);
      laughs.append("a" + i + ": &a" + i + " [" + (before + ", ").repeat(8) + before + "]\n");
    }
    Problem first = refused(laughs.toString()).get(0);
    assertThat(first.code()).isEqualTo("pack.yaml-alias");
    assertThat(first.place()).isEqualTo(new Place.Spot(GoodPack.NAME + "/pack.yaml", 1, 5, ""));
    assertThat(first.found()).isEqualTo("&a0");
  }

  @Test
  void aTagIsRefused() {
    Problem tag = refused("format: 1\nname: !!java.net.URL [x]\n").get(0);
    assertThat(tag.code()).isEqualTo("pack.yaml-tag");
    assertThat(tag.place()).isEqualTo(new Place.Spot(GoodPack.NAME + "/pack.yaml", 2, 7, ""));
    assertThat(codes("name: !local x")).contains("pack.yaml-tag");
    assertThat(codes("!!set {a}")).contains("pack.yaml-tag");
  }

  @Test
  void depthIsRefusedBeforeItIsBuilt() {
    assertThat(codes("a: " + "[".repeat(100_000))).contains("pack.yaml-deep");
    assertThat(codes("{a: ".repeat(50_000))).contains("pack.yaml-deep");
    assertThat(codes("- ".repeat(20_000) + "x")).contains("pack.yaml-deep");
    assertThat(codes("? ".repeat(20_000))).contains("pack.yaml-deep");
  }

  @Test
  void tooMuchIsRefused() {
    assertThat(codes("a: " + "x".repeat(300_000))).containsExactly("pack.too-big");
    assertThat(codes("a: " + "x".repeat(5_000))).containsExactly("pack.text-long");
    assertThat(codes("a: [" + "1,".repeat(50_000) + "]")).containsExactly("pack.yaml-entries");
    String many = String.join("\n", Collections.nCopies(900, "- {a: 1, b: 2}"));
    assertThat(refused(many)).hasSizeLessThanOrEqualTo(PackLimits.PROBLEMS);
  }

  @Test
  void aFieldTwiceIsSaidAtTheSecond() {
    String yaml = GoodPack.text("pack.yaml") + "minutes: 150\n";
    Problem twice = refused(yaml).get(0);
    long line = yaml.lines().count();
    assertThat(twice.code()).isEqualTo("pack.yaml-twice");
    assertThat(twice.place())
        .isEqualTo(new Place.Spot(GoodPack.NAME + "/pack.yaml", (int) line, 1, "minutes"));
  }

  @Test
  void otherShapesAreRefused() {
    assertThat(codes("")).containsExactly("pack.empty");
    assertThat(codes("# only a remark\n")).containsExactly("pack.empty");
    assertThat(codes("just words")).contains("pack.want-fields");
    assertThat(codes("[1, 2]")).contains("pack.want-fields");
    assertThat(codes("a: 1\n---\nb: 2\n")).contains("pack.yaml-documents");
    assertThat(codes("[a]: 1\n")).contains("pack.yaml-key");
    assertThat(codes("a: [1, 2\nb: 3")).containsExactly("pack.yaml-list");
    assertThat(codes("a:\n\t- 1")).containsExactly("pack.yaml-tab");
    assertThat(codes("a: \u0007")).containsExactly("pack.yaml");
    assertThat(codes("minutes: .inf\n")).contains("pack.want-whole-number");
    assertThat(codes("minutes: 9999999999999999999999\n")).contains("pack.want-whole-number");
    assertThat(codes("minutes: 1e999999999\n")).contains("pack.want-whole-number");
  }

  @Test
  void bytesThatAreNoTextAreSaidWhereTheyStand() {
    byte[] latin = "format: 1\ntitle: Säume\n".getBytes(StandardCharsets.ISO_8859_1);
    Problem problem = READ.read(GoodPack.with("pack.yaml", latin)).problems().get(0);
    assertThat(problem.code()).isEqualTo("pack.not-utf8");
    assertThat(problem.place()).isEqualTo(new Place.Spot(GoodPack.NAME + "/pack.yaml", 2, 9, ""));
    assertThat(problem.found()).isEqualTo("0xE4");
  }

  @Test
  void aMarkOfByteOrderAndTurkishLettersDoNoHarm() {
    Locale before = Locale.getDefault();
    Locale.setDefault(Locale.forLanguageTag("tr-TR"));
    try {
      String yaml = "\uFEFF" + GoodPack.text("pack.yaml");
      assertThat(READ.read(GoodPack.with("pack.yaml", yaml)).problems()).isEmpty();
    } finally {
      Locale.setDefault(before);
    }
  }

  private static List<String> codes(String yaml) {
    return refused(yaml).stream().map(Problem::code).toList();
  }

  private static List<Problem> refused(String yaml) {
    List<Problem> problems =
        assertTimeoutPreemptively(
            Duration.ofSeconds(20), () -> READ.read(GoodPack.with("pack.yaml", yaml)).problems());
    Words words = Words.english();
    assertThat(problems)
        .isNotEmpty()
        .allSatisfy(each -> assertThat(words.has("problem." + each.code())).isTrue());
    return problems;
  }
}
