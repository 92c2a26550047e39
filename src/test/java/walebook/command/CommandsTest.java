package walebook.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import walebook.act.book.MakeDemoBook;
import walebook.book.Classroom;
import walebook.words.Words;

/** The command line on a real book: what it writes, where, and by which number it ends. */
class CommandsTest {
  private static final String[] PIECE = {
    "--student",
    "S01",
    "--cloth",
    "grey",
    "--grain",
    "course",
    "--stitch",
    "304",
    "--machine",
    "4",
    "--dial-width",
    "2.5",
    "--dial-length",
    "2.5"
  };

  @TempDir Path folder;
  private String book = "";

  @BeforeEach
  void makeBook() {
    Path file = folder.resolve("class.walebook");
    Classroom.in(file).close();
    book = file.toString();
  }

  private static Ran run(String in, String... args) {
    return Ran.typing(in, args);
  }

  private Ran log(String in, String... more) {
    String[] args = new String[4 + PIECE.length + more.length];
    args[0] = "piece";
    args[1] = "log";
    args[2] = "--book";
    args[3] = book;
    System.arraycopy(PIECE, 0, args, 4, PIECE.length);
    System.arraycopy(more, 0, args, 4 + PIECE.length, more.length);
    return run(in, args);
  }

  @Test
  void logsAPieceThatCanBeShownAgain() {
    Ran logged = log("", "--gauge", "10 cm", "--end", "gave", "--end-length", "15,2 cm");
    assertThat(logged.err()).isEmpty();
    assertThat(logged.exit()).isZero();
    String code = logged.out().strip();
    JsonNode shown = run("", "piece", "show", code, "--book", book, "--json").json();
    assertThat(shown.get("gaugeMm").asDouble()).isEqualTo(100);
    assertThat(shown.get("endMm").asDouble()).isEqualTo(152);
    assertThat(shown.get("end").asString()).isEqualTo("gave");
    assertThat(shown.get("seamStretchPercent").isNumber()).isTrue();
    assertThat(shown.get("sewnLengthMm").asDouble()).isEqualTo(2.2);
    Ran text = run("", "piece", "show", code, "--book", book);
    assertThat(text.out()).contains("100 × (152 − 100) ÷ 100 = 52.0 %");
    assertThat(run("", "piece", "list", "--book", book).out()).contains(code, "52.0");
  }

  @Test
  void saysWhatMayBeBehindAFaultAndHowToSewItNext() {
    String code =
        log("", "--needle-point", "universal", "--needle-nm", "80", "--faults", "skipped-stitches")
            .out()
            .strip();
    JsonNode faults = run("", "piece", "causes", code, "--book", book, "--json").json();
    JsonNode first = faults.get(0).get("causes").get(0);
    assertThat(first.get("cause").asString()).contains("needle");
    assertThat(first.get("standing").asString()).isEqualTo("fits");
    assertThat(first.get("next").get("field").asString()).isEqualTo("needle-point");
    assertThat(first.get("next").get("to").asString()).isEqualTo("stretch");
    Ran text = run("", "piece", "causes", code, "--book", book);
    assertThat(text.out()).contains("1. blunt needle or wrong point", "--needle-point stretch");
    Ran other = run("", "piece", "causes", code, "--book", book, "--fault", "wavy-seam");
    assertThat(other.out())
        .contains("wavy seam")
        .doesNotContain("skipped")
        .contains("Assumed, since no place was given: all along (all-along).")
        .contains("Assumed, since no time was given: seen off the machine (sewn).");
    assertThat(run("", "piece", "causes", code, "--book", book, "--fault", "press-marks").out())
        .contains("Assumed, since no time was given: seen after pressing (pressed).");
    Ran said =
        run("", "piece", "causes", code, "--book", book, "--fault", "wavy-seam,curve,2,pressed");
    assertThat(said.out()).contains("wavy seam").doesNotContain("Assumed");
    assertThat(run("", "piece", "causes", code, "--book", book, "--fault", "luck").exit())
        .isEqualTo(1);
    // The line that is offered is one that can be run.
    Ran again =
        run("", "piece", "log", "--book", book, "--again", code, "--needle-point", "stretch");
    assertThat(again.exit()).isZero();
    JsonNode second =
        run("", "piece", "show", again.out().strip(), "--book", book, "--json").json();
    assertThat(second.get("changed").asString()).isEqualTo("needle-point");
  }

  @Test
  void takesTheInputsOfACalculationAsPairsAndAsksWhatIsUnlikely() {
    Ran ran = run("", "work", "ease", "body=90cm", "finished=32 in", "--json");
    assertThat(ran.exit()).isZero();
    // 32 in are 812.8 mm by the inch of 25.4 mm (1959).
    assertThat(ran.json().toString()).contains("-87.2");
    Ran small = run("", "work", "ease", "body=90", "finished=80");
    assertThat(small.exit()).isZero();
    assertThat(small.err()).contains("Was 90 cm meant?");
    assertThat(run("", "work", "ease", "body=3ells", "finished=80cm").err())
        .contains("body girth")
        .contains("mm, cm, in");
  }

  @Test
  void everyGroupOfCommandsSaysWhatItIsFor() {
    String help = run("", "--help").out();
    assertThat(help).doesNotContain("Takes one of these words");
    assertThat(help).contains("piece", "behind their faults");
  }

  @Test
  void findsAPieceByItsLabel() {
    String code = log("", "--gauge", "10 cm").out().strip();
    Ran found = run("", "piece", "find", code.toLowerCase(java.util.Locale.ROOT), "--book", book);
    assertThat(found.out()).contains(code, "Ada Pier");
    JsonNode json = run("", "piece", "find", code, "--book", book, "--json").json();
    assertThat(json.get("logged").asBoolean()).isTrue();
    Ran wrong = run("", "piece", "find", "0" + code.substring(1), "--book", book);
    assertThat(wrong.exit()).isEqualTo(1);
    assertThat(wrong.err()).contains("one sign is wrong", code);
  }

  @Test
  void saysEveryMistakeWithItsPlace() {
    Ran ran = log("", "--gauge", "ten", "--end-length", "152", "--grade", "9");
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err().lines().toList()).hasSizeGreaterThanOrEqualTo(3);
    assertThat(ran.err()).contains("gauge").contains("gave or held").contains("look: 9");
  }

  @Test
  void saysMistakesToProgramsAsJson() {
    Ran ran = log("", "--gauge", "ten", "--json");
    JsonNode problem = JsonMapper.shared().readTree(ran.err().lines().findFirst().orElse(""));
    assertThat(problem.get("place").asString()).isEqualTo("gauge");
    assertThat(problem.get("found").asString()).isEqualTo("ten");
    assertThat(problem.get("code").asString()).startsWith("number.");
  }

  @Test
  void asksBeforeItTakesWhatIsUnlikely() {
    String[] odd = {"--gauge", "100", "--end", "held", "--end-length", "900"};
    assertThat(log("", odd).exit()).isEqualTo(1);
    String[] sure = {"--gauge", "100", "--end", "held", "--end-length", "900", "--sure"};
    assertThat(log("", sure).exit()).isZero();
  }

  @Test
  void acknowledgesEachLineOfStandardInput() {
    String lines =
        """
        gauge=100 end=held end-length=160 remark="on a "
        gauge=x
        nonsense

        gauge=100 end=gave end-length=130
        """;
    Ran ran = log(lines, "--from", "-");
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.out().lines().toList()).hasSize(2).allMatch(each -> each.length() == 6);
    assertThat(ran.err()).contains("-:2:1: gauge").contains("-:3:1");
    assertThat(run("", "piece", "list", "--book", book, "--json").json().size()).isEqualTo(2);
  }

  @Test
  void sewsAgainWithOneChange() {
    String code = log("").out().strip();
    Ran again =
        run("", "piece", "log", "--book", book, "--again", code, "--dial-width", "3", "--json");
    assertThat(again.exit()).isZero();
    assertThat(again.json().get("changed").asString()).isEqualTo("dial-width");
    Ran none = run("", "piece", "log", "--book", book, "--again", code);
    assertThat(none.exit()).isEqualTo(1);
  }

  @Test
  void readsACloth() {
    Ran ran =
        run(
            "",
            "cloth",
            "read",
            "--book",
            book,
            "--cloth",
            "Grey jersey",
            "--grain",
            "course",
            "--gauge",
            "4 in",
            "--stretched",
            "6 in",
            "--json");
    assertThat(ran.err()).isEmpty();
    assertThat(ran.json().get("gaugeMm").asDouble()).isEqualTo(101.6);
    assertThat(ran.json().get("stretchPercent").asDouble()).isCloseTo(50, within(1e-9));
    JsonNode cloths = run("", "cloth", "list", "--book", book, "--json").json();
    assertThat(cloths.get(0).get("courseStretch").get("percent").asDouble())
        .isCloseTo(50, within(1e-9));
  }

  @Test
  void startsAClassInABookOfItsOwn() {
    String file = folder.resolve("new.walebook").toString();
    assertThat(run("", "book", "new", "--book", file, "--name", "Pier hall").exit()).isZero();
    assertThat(run("", "book", "undo", "--book", file).err()).contains("nothing to take back");
    Ran begun =
        run(
            "",
            "class",
            "start",
            "--book",
            file,
            "--name",
            "Tuesday",
            "--student",
            "Ada Pier",
            "--student",
            "Bo Quay",
            "--starts",
            "2026-09-01",
            "--json");
    assertThat(begun.json().get("students").size()).isEqualTo(2);
    Ran badly = run("", "class", "start", "--book", file, "--name", " ", "--starts", "soon");
    assertThat(badly.exit()).isEqualTo(1);
    assertThat(badly.err().lines().count()).isEqualTo(2);
  }

  @Test
  void endsWithANumberThatTellsWhatWentWrong() {
    assertThat(run("", "piece", "lst").exit()).isEqualTo(2);
    assertThat(run("", "piece", "list").exit()).isEqualTo(2);
    assertThat(run("").exit()).isEqualTo(2);
    assertThat(run("", "--help").exit()).isZero();
    Ran missing = run("", "book", "show", "--book", folder.resolve("none").toString());
    assertThat(missing.exit()).isEqualTo(3);
    assertThat(missing.err()).contains("none").contains("no such file");
    assertThat(run("", "piece", "show", "AAAAAB", "--book", book).exit()).isEqualTo(1);
  }

  @Test
  void makesTheDemoAndComparesItsClass() {
    String to = folder.resolve("demo").toString();
    JsonNode made = run("", "demo", "make", "--to", to, "--json").json();
    assertThat(made.get("invented").asBoolean()).isTrue();
    String file = Path.of(to, MakeDemoBook.FILE).toString();
    JsonNode table =
        run("", "compare", "--book", file, "--by", "stitch", "--by", "dial-width", "--json").json();
    int pieces = 0;
    for (JsonNode row : table.get("rows")) {
      pieces += row.get("pieces").asInt();
      assertThat(row.get("gave").asInt() + row.get("held").asInt())
          .isLessThanOrEqualTo(row.get("pieces").asInt());
    }
    assertThat(pieces).isEqualTo(made.get("pieces").asInt());
    Ran progress = run("", "progress", "--book", file);
    assertThat(progress.out()).contains("Håkon Brygvik").contains("/5");
    assertThat(run("", "progress", "--book", file, "--aliases").out()).doesNotContain("Håkon");
    assertThat(run("", "demo", "make", "--to", to).exit()).isEqualTo(3);
    assertThat(run("", "class", "show", "--book", file).out()).contains("overlocker");
    Ran first = run("", "piece", "list", "--book", file, "--lesson", "2", "--student", "S03");
    assertThat(first.out()).contains("2026-09-21").doesNotContain("2026-10-05");
  }

  @Test
  void doesTheSameJobWithoutAScreen() {
    Path to = folder.resolve("demo");
    assertThat(Ran.at("", terminal -> WithoutScreen.run(terminal, to)).exit()).isZero();
    assertThat(to.resolve(MakeDemoBook.FILE)).exists();
    Ran ran = Ran.at("", terminal -> WithoutScreen.run(terminal, to));
    assertThat(ran.exit()).isZero();
    assertThat(ran.out()).contains("no screen").contains("zigzag");
  }

  @Test
  void showsACalculationWithItsWorking() {
    // 10 cm reaching 15 cm is 50 %, reaching 13 cm is 30 %: common practice.
    JsonNode fifty =
        run("", "work", "stretch", "--gauge", "10 cm", "--stretched", "15 cm", "--json").json();
    assertThat(fifty.get("result").get("value").asDouble()).isEqualTo(50);
    assertThat(fifty.get("steps").size()).isPositive();
    Ran thirty = run("", "work", "stretch", "--gauge", "100", "--stretched", "130");
    assertThat(thirty.out()).contains("30.0");
    assertThat(run("", "work", "stretch", "--gauge", "abc", "--stretched", "1").exit())
        .isEqualTo(1);
    assertThat(run("", "work", "list", "--json").json().size()).isGreaterThan(20);
  }

  @Test
  void checksAPack() throws Exception {
    assertThat(run("", "pack", "list").out()).contains("seam-that-stretches");
    assertThat(run("", "pack", "check", "lesson-packs/measuring-stretch").exit()).isZero();
    Path broken = Files.createDirectory(folder.resolve("broken"));
    Files.writeString(broken.resolve("pack.yaml"), "format: 1\nname: [\n");
    Files.writeString(broken.resolve("lesson.md"), "# A lesson\n");
    Ran ran = run("", "pack", "check", broken.toString());
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.err()).contains("pack.yaml");
  }

  @Test
  void aPackThatIsNotThereIsNamedWithItsFolder() {
    String zip = folder.resolve("none.zip").toString();
    assertThat(run("", "pack", "check", zip).err())
        .isEqualToIgnoringNewLines(zip + ": There is no such file or folder.");
  }

  @Test
  void aPackOfTheProgramIsWrittenWithoutABook() {
    String zip = folder.resolve("seam.zip").toString();
    Ran ran = run("", "pack", "export", "seam-that-stretches", "--to", zip);
    assertThat(ran.err()).isEmpty();
    assertThat(run("", "pack", "check", zip).out()).contains("A seam that stretches");
    Ran other = run("", "pack", "export", "flat-on-rib", "--to", zip, "--replace");
    assertThat(other.err()).contains("flat-on-rib", "seam-that-stretches");
  }

  @Test
  void aPackComesIntoTheBookAndGoesOutAsAZip() {
    String at = "src/test/resources/walebook/lesson/broken/flat-on-rib";
    assertThat(run("", "pack", "add", at, "--book", book).out()).contains("Flat on rib (1.0)");
    assertThat(run("", "pack", "add", at, "--book", book).out()).contains("Nothing to add");
    JsonNode all = run("", "pack", "list", "--book", book, "--json").json();
    JsonNode last = all.get(all.size() - 1);
    assertThat(last.get("name").asString()).isEqualTo("flat-on-rib");
    assertThat(last.get("inBook").asBoolean()).isTrue();
    String zip = folder.resolve("rib.zip").toString();
    assertThat(run("", "pack", "export", "flat-on-rib", "--book", book, "--to", zip).exit())
        .isZero();
    Ran again = run("", "pack", "export", "flat-on-rib", "--book", book, "--to", zip);
    assertThat(again.exit()).isEqualTo(1);
    assertThat(again.err()).contains("--replace");
    JsonNode checked = run("", "pack", "check", zip, "--json").json();
    assertThat(checked.get("contentHash")).isEqualTo(last.get("contentHash"));
    assertThat(run("", "pack", "remove", "flat-on-rib", "--book", book).exit()).isZero();
    Ran gone = run("", "pack", "remove", "flat-on-rib", "--book", book);
    assertThat(gone.exit()).isEqualTo(1);
    assertThat(gone.err()).contains("flat-on-rib");
  }

  @Test
  void everySentenceOfTheHelpIsThere() {
    Words words = Words.english();
    for (Job job : Jobs.all()) {
      assertThat(words.has(job.says())).as(job.says()).isTrue();
      for (Option option : job.options()) {
        assertThat(words.has(option.says())).as(option.says()).isTrue();
      }
      for (Option option : job.operands()) {
        assertThat(words.has(option.says())).as(option.says()).isTrue();
      }
    }
  }
}
