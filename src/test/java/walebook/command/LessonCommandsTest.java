package walebook.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import walebook.book.Classroom;
import walebook.paper.ReadPdf;

/** Lessons, plans and kits from the command line. */
class LessonCommandsTest {
  @TempDir Path folder;
  private String book = "";

  @BeforeEach
  void makeBook() {
    Path file = folder.resolve("class.walebook");
    Classroom.in(file).close();
    book = file.toString();
  }

  private static Ran run(String... args) {
    return Ran.of(args);
  }

  private Ran takeUp(String... more) {
    String[] first = {
      "lesson",
      "take-up",
      "seam-that-stretches",
      "--book",
      book,
      "--cloth",
      "a=Grey",
      "--cloth",
      "b=grey jersey",
      "--on",
      "2026-10-12",
      "--sure"
    };
    String[] args = Arrays.copyOf(first, first.length + more.length);
    System.arraycopy(more, 0, args, first.length, more.length);
    return run(args);
  }

  @Test
  void aLessonIsTakenUpShownAndPlannedAgain() {
    Ran taken = takeUp("--share", "S02=6", "--seed", "4", "--json");
    assertThat(taken.err()).isEmpty();
    assertThat(taken.json().get("students").get(1).get("pieces")).hasSize(7);
    assertThat(taken.json().get("fairness").get("pieces").asInt()).isEqualTo(10);
    Ran shown = run("lesson", "plan", "--book", book, "--lesson", "1");
    assertThat(shown.out()).contains("A seam that stretches", "Ada Pier", "combinations is sewn");
    assertThat(shown.out()).contains("zigzag · width 2 · length 1.5").doesNotContain("width=");
    Ran same = run("lesson", "replan", "--book", book, "--lesson", "1", "--share", "S02=6");
    assertThat(same.out()).contains("Pieces handed out: 0. Pieces taken back: 0.");
    Ran fewer =
        run("lesson", "replan", "--book", book, "--lesson", "1", "--share", "S02=2", "--json");
    assertThat(fewer.json().get("takenBack").asInt()).isGreaterThanOrEqualTo(4);
    assertThat(fewer.json().get("students").get(1).get("pieces")).hasSize(3);
  }

  @Test
  void aLessonOfReadingsIsTakenUpShownMeasuredAndPlannedAgain() {
    String[] takeUp = {
      "lesson",
      "take-up",
      "do-we-measure-alike",
      "--book",
      book,
      "--cloth",
      "a=Grey",
      "--without",
      "cloth b",
      "--without",
      "cloth c",
      "--seed",
      "4"
    };
    assertThat(run(takeUp).err()).contains("without", "nobody has anything left to measure");
    takeUp[8] = "b=grey jersey";
    takeUp[7] = "--cloth";
    Ran asked = run(takeUp);
    assertThat(asked.err()).contains("--sure");
    String[] sure = Arrays.copyOf(takeUp, takeUp.length + 2);
    sure[takeUp.length] = "--sure";
    sure[takeUp.length + 1] = "--json";
    Ran taken = run(sure);
    assertThat(taken.err()).isEmpty();
    JsonNode mine = taken.json().get("students").get(0).get("readings");
    assertThat(mine).hasSize(2);
    assertThat(mine.get(0).get("control").asBoolean()).isTrue();
    assertThat(mine.get(0).get("asked").asInt()).isEqualTo(3);
    assertThat(mine.get(0).get("grain").asString()).isEqualTo("course");
    assertThat(mine.get(0).get("cloth").asString()).isEqualTo("Grey jersey");
    Ran read =
        run(
            "cloth",
            "read",
            "--book",
            book,
            "--cloth",
            "Grey",
            "--student",
            "S01",
            "--lesson",
            "1",
            "--grain",
            "course",
            "--gauge",
            "100",
            "--stretched",
            "150");
    assertThat(read.err()).isEmpty();
    Ran shown = run("lesson", "plan", "--book", book, "--lesson", "1");
    assertThat(shown.out()).contains("Ada Pier", "course-wise", "1 of 3", "0 of 3");
    Ran progress = run("progress", "--book", book);
    assertThat(progress.out()).contains("1/6", "0/6");
    Ran same = run("lesson", "replan", "--book", book, "--lesson", "1");
    assertThat(same.out()).contains("Pieces handed out: 0");
  }

  @Test
  void oneClothForTwoIsAskedAboutUnlessOneIsSure() {
    Ran asked =
        run(
            "lesson",
            "take-up",
            "seam-that-stretches",
            "--book",
            book,
            "--cloth",
            "a=Grey",
            "--cloth",
            "b=Grey");
    assertThat(asked.exit()).isNotZero();
    assertThat(asked.err()).contains("the lesson compares them", "--sure");
  }

  @Test
  void mistakesAreNamed() {
    assertThat(takeUp("--share", "9999").err().lines())
        .singleElement()
        .asString()
        .contains("share: 9999 is more than there is to sew", "12");
    assertThat(takeUp("--share", "S02=9999").err().lines())
        .singleElement()
        .asString()
        .contains("S02=9999");
    assertThat(takeUp("--without", "sewing").err().lines())
        .singleElement()
        .asString()
        .contains("without: nobody has anything left to sew");
    assertThat(takeUp("--cloth", "q=Grey").err()).contains("cloth: q", "a, b");
    assertThat(takeUp("--leave-out", "depth=3").err()).contains("depth=3", "width=1");
    assertThat(takeUp("--seed", "x").exit()).isEqualTo(1);
    assertThat(takeUp("--cloth", "grey").err()).contains("grey");
    assertThat(run("lesson", "take-up", "no-such-pack", "--book", book).err())
        .contains("no-such-pack", "seam-that-stretches");
    assertThat(run("lesson", "replan", "--book", book, "--lesson", "4").exit()).isEqualTo(1);
  }

  @Test
  void aKitWithoutPricesSaysItsSparesAndNoSum() {
    Ran kit = run("kit", "list", "seam-that-stretches", "--students", "12");
    assertThat(kit.out()).contains("Spares are included", "10 %").doesNotContain("Together");
  }

  @Test
  void aKitThatCannotBeWorkedOutSaysWhy() {
    assertThat(run("kit", "list", "seam-that-stretches").err())
        .contains("students: this is needed");
    assertThat(narrow("kit", "list", "seam-that-stretches"))
        .contains("width-a: 50 mm of width", "too narrow for a piece", "200 mm across");
    assertThat(narrow("print", "kit", "--pack", "seam-that-stretches", "--out", "kit.pdf"))
        .contains("width-a: 50 mm of width");
    assertThat(run("kit", "list", "seam-that-stretches", "--book", book, "--cloth", "q=Grey").err())
        .contains("cloth: q is not known", "a, b");
    assertThat(run("class", "start", "--book", book, "--name", "Empty").err()).isEmpty();
    assertThat(run("kit", "list", "seam-that-stretches", "--book", book, "--class", "Empty").err())
        .contains("0 students: a kit is for at least one");
    Ran no = run("print", "kit", "--book", book, "--class", "Empty", "--out", "kit.pdf");
    assertThat(no.err()).contains("lesson: this class has no lesson yet");
    assertThat(run("print", "kit", "--out", "kit.pdf").err()).contains("--pack");
  }

  private String narrow(String... words) {
    String[] args = Arrays.copyOf(words, words.length + 4);
    System.arraycopy(
        new String[] {"--students", "12", "--width", "a=5cm"}, 0, args, words.length, 4);
    Ran ran = run(args);
    assertThat(ran.exit()).isEqualTo(1);
    return ran.err();
  }

  /** One line for the thread, and the whole list on paper for a pack nobody took up. */
  @Test
  void aPacksKitIsPrintedWithoutABook() throws IOException {
    Ran list = run("kit", "list", "seam-that-stretches", "--students", "12");
    assertThat(list.out().lines().filter(each -> each.matches(".*[Tt]hread.* m\\s*")))
        .singleElement()
        .asString()
        .contains("264");
    Path file = folder.resolve("kit.pdf");
    Ran ran =
        run(
            "print",
            "kit",
            "--pack",
            "seam-that-stretches",
            "--students",
            "12",
            "--width",
            "a=150cm",
            "--out",
            file.toString());
    assertThat(ran.err()).isEmpty();
    try (ReadPdf pdf = ReadPdf.of(file)) {
      assertThat(pdf.text()).contains("For 12 students", "264 m", "150 cm of width can be used");
    }
  }

  /** A lesson taken up is reckoned from its plan, a pack from the class list, and each says so. */
  @Test
  void aKitOfALessonIsReckonedFromItsPlan() {
    takeUp("--share", "2", "--seed", "4");
    Ran lesson = run("kit", "list", "--book", book, "--lesson", "1");
    assertThat(lesson.err()).isEmpty();
    assertThat(lesson.out())
        .contains("the plan as it was dealt: 2 students, 6 pieces to sew")
        .contains("Grey jersey", "of thread on the list for each student");
    Ran pack = run("kit", "list", "seam-that-stretches", "--book", book);
    assertThat(pack.out()).contains("0 on the core plan, 2 on the standard plan");
    Ran alone = run("kit", "list", "seam-that-stretches", "--students", "12");
    assertThat(alone.out()).contains("as if everybody were on the standard plan");
    assertThat(run("kit", "list").err()).contains("say either a pack");
    assertThat(run("kit", "list", "seam-that-stretches", "--lesson", "1", "--book", book).err())
        .contains("say either a pack");
    assertThat(run("kit", "list", "--lesson", "1").err()).contains("book");
  }

  @Test
  void aKitIsListedWithItsPictures() throws IOException {
    Ran kit =
        run(
            "kit",
            "list",
            "seam-that-stretches",
            "--students",
            "12",
            "--width",
            "a=150cm",
            "--price",
            "a=8,5",
            "--pictures",
            folder.toString(),
            "--json");
    assertThat(kit.err()).isEmpty();
    JsonNode line = kit.json().get("lines").get(0);
    assertThat(line.get("forClass").asDouble()).isEqualTo(1.6);
    assertThat(line.get("cost").asDouble()).isCloseTo(13.6, within(1e-9));
    assertThat(kit.json().get("cloths").get(0).get("plan").get("placed")).hasSize(106);
    assertThat(Files.readString(folder.resolve("cutting-plan-1.svg"))).contains("<svg");
    Ran ofBook = run("kit", "list", "seam-that-stretches", "--book", book, "--cloth", "a=Grey");
    assertThat(ofBook.out()).contains("kit for 2 students", "Grey jersey, 150 cm wide");
    assertThat(run("kit", "list", "seam-that-stretches", "--students", "0").err())
        .contains("at least one");
    assertThat(run("kit", "list", "seam-that-stretches", "--cloth", "a=Grey").exit()).isEqualTo(1);
  }

  /** Asking leaves the book as it was; it remembers a price only where that is asked for. */
  @Test
  void aPriceIsKeptOnlyWhereThatIsSaid() {
    String[] asked = {
      "kit",
      "list",
      "seam-that-stretches",
      "--book",
      book,
      "--cloth",
      "a=Grey",
      "--width",
      "a=150cm"
    };
    assertThat(run(with(asked, "--price", "a=8.50")).out())
        .contains("Together")
        .doesNotContain("remembers");
    assertThat(run(asked).out()).doesNotContain("Together");
    assertThat(run(with(asked, "--price", "a=8.50", "--keep-prices")).out())
        .contains("Prices that the book remembers or forgets from now on: 1.");
    assertThat(run(asked).out()).contains("Together");
    assertThat(
            run(with(asked, "--price", "a=", "--keep-prices", "--json")).json().get("pricesKept"))
        .hasToString("1");
    assertThat(run(asked).out()).doesNotContain("Together");
    Ran without = run("kit", "list", "seam-that-stretches", "--students", "3", "--keep-prices");
    assertThat(without.exit()).isEqualTo(1);
    assertThat(without.err()).contains("book");
  }

  private static String[] with(String[] args, String... more) {
    String[] all = Arrays.copyOf(args, args.length + more.length);
    System.arraycopy(more, 0, all, args.length, more.length);
    return all;
  }

  @Test
  void scrapsAreAnswered() {
    Ran yes = run("kit", "scraps", "--piece", "2 of 20cm x 10cm", "--scrap", "blue=25cm x 21cm");
    assertThat(yes.out()).contains("Yes: all 2 pieces come out.", "blue");
    Ran no = run("kit", "scraps", "--piece", "30cm x 10cm", "--scrap", "25cm x 50cm", "--json");
    assertThat(no.json().get("outcome").asString()).isEqualTo("cannot");
    assertThat(run("kit", "scraps", "--piece", "3", "--scrap", "30cm x 30cm").err())
        .contains("piece to cut: 3 is no piece");
    assertThat(run("kit", "scraps").err()).contains("no piece", "no scrap");
  }
}
