package walebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import walebook.act.book.DemoBook;
import walebook.act.book.MakeDemoBook;
import walebook.book.Classroom;
import walebook.book.open.SqliteFiles;
import walebook.quantity.Show;
import walebook.record.Grain;

/** Comparisons at the command line, on the demo class. */
class FairCommandsTest {
  @TempDir static Path folder;
  private static Path book = Path.of("");

  @BeforeAll
  static void makeBook() {
    book = folder.resolve("demo.walebook");
    DemoBook.copyTo(book);
  }

  private static Ran run(String... args) {
    return Ran.on(book, args);
  }

  @Test
  void everyOutcomeIsComparedAsTextAndForPrograms() {
    for (String outcome : List.of("seam-share", "seam-stretch", "edge-change", "grade", "held")) {
      Ran text =
          run("compare", "--outcome", outcome, "--by", "stitch", "--matters", "2", "--tables");
      assertThat(text.err()).isEmpty();
      assertThat(text.exit()).isZero();
      assertThat(text.out()).contains("Pieces counted here").doesNotContain("NaN", "[c");
      Ran ran = run("compare", "--outcome", outcome, "--by", "stitch", "--json");
      assertThat(ran.out()).doesNotContain("NaN", "pHolm");
      JsonNode json = ran.json();
      assertThat(json.get("rows").size()).isGreaterThan(2);
      assertThat(json.get("says").size()).isPositive();
      assertThat(json.get("setAside").asInt()).isZero();
      assertThat(json.get("rows").get(0).get("dots").size())
          .isEqualTo(json.get("rows").get(0).get("pieces").asInt());
    }
  }

  /** The same words and codes at the command line as on the screen and on labels. */
  @Test
  void settingsAndCodesReadAsEverywhere() {
    String fair = run("compare", "--outcome", "grade").out();
    assertThat(fair).contains("course-wise", "width 2.5").doesNotContain("not noted");
    assertThat(fair).containsPattern("Best: [0-9A-Z]{3}-[0-9A-Z]{3} \\(");
    assertThat(run("compare", "--by", "stitch").out()).contains("Pieces on 5 cloths");
    String plain = run("compare").out();
    assertThat(plain).contains("grain: course-wise").doesNotContain("grain: course\n");
    assertThat(run("odd", "list").out()).containsPattern("(?m)^[0-9A-Z]{3}-[0-9A-Z]{3} ");
  }

  @Test
  void theMeasuringErrorOfASeamComesFromTheClassesOwnReadings() {
    double alike = run("alike", "--json").json().get("repeatabilitySd").asDouble();
    JsonNode json = run("compare", "--outcome", "seam-stretch", "--by", "stitch", "--json").json();
    assertThat(json.get("measuringSd").asDouble()).isEqualTo(alike);
  }

  @Test
  void pValuesAreShownOnlyWhenAskedFor() {
    Ran ran = run("compare", "--outcome", "grade", "--by", "stitch", "--p-values", "--json");
    assertThat(ran.json().get("pairs").get(0).has("pHolm")).isTrue();
    Ran text = run("compare", "--outcome", "grade", "--by", "stitch");
    assertThat(text.out()).doesNotContain("Holm");
  }

  @Test
  void tablesComeFactorByFactorAndInPairs() {
    JsonNode json =
        run(
                "compare",
                "--outcome",
                "grade",
                "--by",
                "stitch",
                "--by",
                "cloth",
                "--tables",
                "--json")
            .json();
    assertThat(json.get("factorByFactor").size()).isEqualTo(2);
    assertThat(json.get("pairsOfFactors").get(0).get("cells").size()).isGreaterThan(5);
  }

  @Test
  void namesAreHiddenWhereAsked() {
    Ran ran = run("alike", "--aliases");
    assertThat(ran.out()).contains("S01").doesNotContain("Bashir");
    Ran shown = run("alike");
    assertThat(shown.out()).contains("Bashir", "Two of us may differ by up to");
  }

  /** Nothing logged, then no class at all: a sentence each, no bare header, no riddle. */
  @Test
  void anEmptyBookIsSaidToBeEmpty() {
    Path empty = folder.resolve("empty.walebook");
    Classroom.in(empty).close();
    List<List<String>> all =
        List.of(
            List.of("compare"),
            List.of("compare", "--outcome", "grade"),
            List.of("alike"),
            List.of("control"),
            List.of("known"),
            List.of("growth", "--student", "Ada"),
            List.of("odd"));
    for (List<String> each : all) {
      Ran ran = Ran.on(empty, each.toArray(String[]::new));
      assertThat(ran.err()).as(each.toString()).isEmpty();
      assertThat(ran.out())
          .as(each.toString())
          .containsPattern("No(body|thing)? ")
          .doesNotContain("---", "NaN");
      List<String> json = new ArrayList<>(each);
      json.add("--json");
      assertThat(Ran.on(empty, json.toArray(String[]::new)).json()).isNotNull();
    }
    Path bare = folder.resolve("bare.walebook");
    assertThat(Ran.on(bare, "book", "new", "--name", "Bare").exit()).isZero();
    assertThat(Ran.on(bare, "compare").err()).contains("no class yet");
    assertThat(Ran.on(bare, "known").out()).contains("No piece");
  }

  @Test
  void whatIsLeftOutHasItsUsualMeaning() {
    assertThat(run("control").out()).startsWith("seam’s share");
    assertThat(run("odd").out()).isEqualTo(run("odd", "list").out());
    assertThat(run("odd", "--json").json()).isEqualTo(run("odd", "list", "--json").json());
    assertThat(run("odd", "--help").out()).contains("mark", "undo");
    assertThat(run("compare", "--cloth", "Zug").err()).contains("Zug", "Gull jersey");
  }

  @Test
  void oneStudentAloneHasNoBiasAndNoLimit() {
    Path alone = folder.resolve("alone.walebook");
    try (Classroom room = Classroom.in(alone)) {
      for (double stretched : new double[] {150, 152, 151}) {
        room.book.clothLog().add(room.reading(Grain.COURSE, stretched));
      }
    }
    Ran text = Ran.on(alone, "alike");
    assertThat(text.exit()).isZero();
    assertThat(text.out())
        .contains("Only one of us measured this")
        .doesNotContain("An h beyond", "±–")
        .containsPattern("Ada Pier +3 +51\\.0 +– +– +– ");
    JsonNode study = Ran.on(alone, "alike", "--json").json().get("studies").get(0);
    assertThat(study.get("people").get(0).get("bias").isNull()).isTrue();
  }

  @Test
  void alikeControlKnownAndGrowthSpeakJson() {
    JsonNode alike = run("alike", "--json").json();
    assertThat(alike.get("studies").size()).isGreaterThan(5);
    assertThat(alike.get("repeatabilitySd").asDouble()).isPositive();
    JsonNode control =
        run("control", "--outcome", "edge-change", "--by", "stitch", "--json").json();
    assertThat(control.get("controls").size()).isEqualTo(12);
    assertThat(control.get("rows").size()).isPositive();
    // The limits are those of the sentences: of all settings together.
    JsonNode first = control.get("rows").get(0);
    assertThat(first.get("meanLow").isNull()).isFalse();
    assertThat(control.get("says").toString())
        .contains(
            Show.fixed(first.get("meanLow").asDouble(), 1)
                + " to "
                + Show.fixed(first.get("meanHigh").asDouble(), 1));
    JsonNode known = run("known", "--cloth", "Gull", "--outcome", "held", "--json").json();
    assertThat(known.get("classes").get(0).get("pulled").asInt()).isPositive();
    JsonNode growth = run("growth", "--student", "S03", "--json").json();
    assertThat(growth.get("periods").get(0).get("tries").asInt()).isPositive();
    for (String text :
        List.of(
            run("control", "--outcome", "grade").out(),
            run("known").out(),
            run("growth", "--student", "S03").out())) {
      assertThat(text).isNotBlank().doesNotContain("NaN", "[c");
    }
  }

  /** A median and a bound are no means, and the tables tell them apart as the window does. */
  @Test
  void tablesMarkMediansAndBounds() {
    Ran ran =
        run(
            "compare",
            "--outcome=seam-share",
            "--by=stitch",
            "--by=dial-width",
            "--by=cloth",
            "--tables");
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out()).containsPattern("½ [0-9.]+ \\([0-9]+\\)");
    assertThat(ran.out()).containsPattern("≥ [0-9.]+ \\([0-9]+\\)");
  }

  @Test
  void aMisspeltStitchIsRefusedWithThoseThatWereSewn() {
    Ran ran = run("known", "--stitch=ovrlock");
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.err()).contains("ovrlock").containsIgnoringCase("zigzag");
    assertThat(run("known", "--stitch=ZIGZAG").exit()).isZero();
  }

  @Test
  void pIsExplainedWhereItStands() {
    assertThat(run("compare", "--outcome=grade", "--by=stitch", "--p-values").out())
        .contains("p (Holm)", "by luck alone");
    assertThat(run("compare", "--outcome=grade", "--by=stitch").out()).doesNotContain("Holm");
  }

  @Test
  void knownHasNoColumnThatSaysNothing() {
    assertThat(run("known", "--outcome=held").out()).containsPattern("students +held");
    assertThat(run("known", "--outcome=grade").out()).containsPattern("students +mean\\R");
  }

  @Test
  void severalBooksAreAskedTogether() {
    Path other = folder.resolve("other.walebook");
    new MakeDemoBook(new SqliteFiles(), Classroom.CLOCK).make(other, 5).value().close();
    JsonNode alone = run("known", "--outcome", "grade", "--by", "cloth", "--json").json();
    JsonNode both =
        run("known", "--outcome", "grade", "--by", "cloth", "--also", other.toString(), "--json")
            .json();
    assertThat(both.get("classes").size()).isEqualTo(2);
    assertThat(both.get("together").get("pieces").asInt())
        .isGreaterThan(alone.get("together").get("pieces").asInt());
    assertThat(both.get("together").get("rows").size())
        .isEqualTo(alone.get("together").get("rows").size());
  }

  @Test
  void anOddValueIsListedMarkedAndTakenBack() {
    JsonNode odd = run("odd", "list", "--json").json();
    assertThat(odd.size()).isPositive();
    JsonNode first = odd.get(0);
    String target = first.get("id").asString();
    String value = first.get("value").asString();
    Ran marked =
        run(
            "odd",
            "mark",
            target,
            "--value",
            value,
            "--set-aside",
            "wrong grain",
            "--by",
            "Tutor",
            "--json");
    assertThat(marked.err()).isEmpty();
    String step = marked.json().get("step").asString();
    JsonNode after = run("odd", "list", "--json").json();
    JsonNode last = after.get(after.size() - 1);
    assertThat(last.get("mark").asString()).isEqualTo("set-aside");
    assertThat(last.get("id").asString()).isEqualTo(target);
    assertThat(run("odd", "undo", step).exit()).isZero();
    assertThat(run("odd", "list", "--json").json()).isEqualTo(odd);
    assertThat(run("odd", "undo", step).exit()).isNotZero();
  }

  @Test
  void wrongWordsAreNamed() {
    assertThat(run("compare", "--outcome", "beauty").err()).contains("beauty", "seam-share");
    assertThat(run("compare", "--outcome", "grade", "--matters", "none").err()).contains("none");
    assertThat(run("compare", "--outcome", "grade", "--matters", "-1").err()).contains("-1");
    assertThat(run("control", "--outcome", "held").err()).contains("held", "time");
    assertThat(run("odd", "mark", "NOSUCH", "--value", "grade", "--kept").err()).contains("NOSUCH");
    assertThat(run("odd", "mark", "NOSUCH", "--value", "nose", "--kept").err()).contains("nose");
    assertThat(run("growth", "--student", "Nobody").err()).contains("Nobody", "Anouk");
  }
}
