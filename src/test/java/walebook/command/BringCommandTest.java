package walebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.book.PieceFilter;
import walebook.book.open.SqliteFiles;
import walebook.words.Words;

/** Spreadsheets in, from the command line. */
@SuppressWarnings("NullAway.Init")
class BringCommandTest {
  private static final String TEXT =
      """
      Who;Date;Fabric;Grain;Stitch;Length of marks;Result;Reached
      Ada Pier;3/4/2026;Grey jersey;course;304;10;gave;14,2
      Nobody;3/4/2026;Grey jersey;course;304;10;held;14,2
      """;

  @TempDir Path folder;
  private Path book;
  private Path text;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @BeforeEach
  void make() throws IOException {
    book = folder.resolve("class.walebook");
    Classroom.in(book).close();
    text = Files.writeString(folder.resolve("mine.csv"), TEXT);
  }

  private int run(String what, String operand, String... more) {
    out.reset();
    err.reset();
    List<String> args = new ArrayList<>(List.of("bring", what, operand, "--book", book.toString()));
    args.addAll(List.of(more));
    return RunCommand.run(
        new Terminal(
            new BufferedReader(new StringReader("")),
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            Words.english(),
            Classroom.CLOCK,
            new Random(5)),
        args.toArray(String[]::new));
  }

  private int pieces(String... more) {
    List<String> all =
        new ArrayList<>(
            List.of(
                "--map", "F=gauge:cm", "--map", "Reached=end-length:cm", "--days", "day-first"));
    all.addAll(List.of(more));
    return run("pieces", text.toString(), all.toArray(String[]::new));
  }

  private String said() {
    return out.toString(StandardCharsets.UTF_8);
  }

  private JsonNode json() {
    return JsonMapper.shared().readTree(said());
  }

  private int logged() {
    try (Book opened = new SqliteFiles().open(book, Classroom.CLOCK).value()) {
      return opened.pieces().count(PieceFilter.ALL);
    }
  }

  @Test
  void aDryRunTellsEveryRowsFateAndKeepsNothing() {
    assertThat(pieces("--dry-run", "--json")).isZero();
    assertThat(json().get("rows").get(0).get("fate").asString()).isEqualTo("new");
    assertThat(json().get("rows").get(1).get("fate").asString()).isEqualTo("refused");
    assertThat(json().get("rows").get(1).get("row").asInt()).isEqualTo(3);
    assertThat(json().get("columns").get(5).get("unit").asString()).isEqualTo("cm");
    assertThat(json().get("step").isNull()).isTrue();
    assertThat(logged()).isZero();
  }

  @Test
  void allOrNothingUnlessTheGoodRowsAreAskedForAndBackAgain() {
    Path rejected = folder.resolve("rejected.xlsx");
    assertThat(pieces()).isEqualTo(Exit.REFUSED.code());
    assertThat(said()).contains("Row 3 (Nobody)").contains("Nothing was brought in");
    assertThat(logged()).isZero();
    assertThat(pieces("--good-rows", "--rejected", rejected.toString(), "--json")).isZero();
    assertThat(logged()).isEqualTo(1);
    assertThat(rejected).exists();
    String step = json().get("step").asString();
    assertThat(run("undo", step)).isZero();
    assertThat(logged()).isZero();
    assertThat(run("undo", step)).isEqualTo(Exit.REFUSED.code());
  }

  @Test
  void aRosterIsBroughtIn() throws IOException {
    Path roster = Files.writeString(folder.resolve("class.csv"), "Name,Code\nNuur Ebb,S09\n");
    assertThat(run("roster", roster.toString())).isZero();
    assertThat(said()).contains("1 new").contains("bring undo");
  }

  @Test
  void whatIsMistypedIsRefusedWithWhatIsKnown() {
    assertThat(pieces("--map", "Z=grade")).isEqualTo(Exit.REFUSED.code());
    assertThat(err.toString(StandardCharsets.UTF_8)).contains("C=gauge:cm");
    assertThat(pieces("--map", "A=shoe-size")).isEqualTo(Exit.REFUSED.code());
    assertThat(pieces("--map", "F=gauge:kg")).isEqualTo(Exit.REFUSED.code());
    assertThat(run("pieces", text.toString(), "--days", "backwards"))
        .isEqualTo(Exit.REFUSED.code());
    assertThat(run("pieces", folder.resolve("gone.xlsx").toString()))
        .isEqualTo(Exit.REFUSED.code());
    assertThat(run("undo", "yesterday")).isEqualTo(Exit.REFUSED.code());
  }
}
