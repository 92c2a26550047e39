package walebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import walebook.act.book.DemoBook;
import walebook.act.book.MakeDemoBook;

/** Garment sheets of the invented class without the window. */
class GarmentCommandTest {
  @TempDir static Path folder;
  private static String book = "";

  @BeforeAll
  static void make() {
    Path file = folder.resolve(MakeDemoBook.FILE);
    DemoBook.copyTo(file);
    book = file.toString();
  }

  private static Ran run(String... args) {
    return Ran.of(args);
  }

  @Test
  void printsBySheetsBeginningAsItChecks() {
    String out = folder.resolve("striped.pdf").toString();
    Ran ran = run("print", "garment", "--book", book, "--garment", "Striped", "--out", out);
    assertThat(ran.err()).isEmpty();
    assertThat(ran.exit()).isZero();
    assertThat(run("print", "garment", "--book", book, "--garment", "zzz", "--out", out).err())
        .contains("zzz is not known here")
        .doesNotContain("kind of garment");
  }

  @Test
  void listsAndAnswers() {
    assertThat(run("garment", "list", "--book", book).out()).contains("Striped top", "loose-top");
    Ran ran = run("garment", "check", "--book", book, "--garment", "striped");
    assertThat(ran.exit()).isZero();
    assertThat(ran.out()).contains("not met", "1. Turn the pieces");
  }

  @Test
  void comparesTheOtherWayRound() {
    String[] args = {
      "garment", "compare", "--book", book, "--garment", "striped", "--grain-round", "course"
    };
    Ran ran = run(args);
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out()).contains("pattern's gauge", "▲ the other choice is better");
    String[] json = java.util.Arrays.copyOf(args, args.length + 1);
    json[args.length] = "--json";
    JsonNode node = JsonMapper.shared().readTree(run(json).out());
    assertThat(node.get("pairs").get(0).get("differs").asString()).isEqualTo("better");
    assertThat(node.get("other").get("checks").size())
        .isEqualTo(node.get("sheet").get("checks").size());
  }

  @Test
  void whatIsWrongIsRefusedByName() {
    Ran ran =
        run("garment", "compare", "--book", book, "--garment", "striped", "--dial-width", "2x");
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.err()).contains("2x");
    assertThat(run("garment", "check", "--book", book, "--garment", "none").exit()).isEqualTo(1);
  }
}
