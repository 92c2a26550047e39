package walebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.book.PieceFilter;
import walebook.book.open.SqliteFiles;

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

  @BeforeEach
  void make() throws IOException {
    book = folder.resolve("class.walebook");
    Classroom.in(book).close();
    text = Files.writeString(folder.resolve("mine.csv"), TEXT);
  }

  private Ran run(String... args) {
    return Ran.on(book, args);
  }

  private Ran pieces(String... more) {
    List<String> all = new ArrayList<>(List.of("bring", "pieces", text.toString()));
    all.addAll(
        List.of("--map", "F=gauge:cm", "--map", "Reached=end-length:cm", "--days", "day-first"));
    all.addAll(List.of(more));
    return run(all.toArray(String[]::new));
  }

  private static void refused(Ran ran) {
    assertThat(ran.exit()).as(ran.out()).isEqualTo(Exit.REFUSED.code());
  }

  private int logged() {
    try (Book opened = new SqliteFiles().open(book, Classroom.CLOCK).value()) {
      return opened.pieces().count(PieceFilter.ALL);
    }
  }

  @Test
  void aDryRunTellsEveryRowsFateAndKeepsNothing() {
    Ran ran = pieces("--dry-run", "--json");
    assertThat(ran.exit()).isZero();
    JsonNode json = ran.json();
    assertThat(json.get("rows").get(0).get("fate").asString()).isEqualTo("new");
    assertThat(json.get("rows").get(1).get("fate").asString()).isEqualTo("refused");
    assertThat(json.get("rows").get(1).get("row").asInt()).isEqualTo(3);
    assertThat(json.get("columns").get(5).get("unit").asString()).isEqualTo("cm");
    assertThat(json.get("step").isNull()).isTrue();
    assertThat(logged()).isZero();
  }

  @Test
  void allOrNothingUnlessTheGoodRowsAreAskedForAndBackAgain() {
    Path rejected = folder.resolve("rejected.xlsx");
    Ran all = pieces();
    refused(all);
    assertThat(all.out()).contains("Row 3 (Nobody)").contains("Nothing was brought in");
    assertThat(logged()).isZero();
    Ran good = pieces("--good-rows", "--rejected", rejected.toString(), "--json");
    assertThat(good.exit()).isZero();
    assertThat(logged()).isEqualTo(1);
    assertThat(rejected).exists();
    String step = good.json().get("step").asString();
    assertThat(run("bring", "undo", step).exit()).isZero();
    assertThat(logged()).isZero();
    refused(run("bring", "undo", step));
  }

  @Test
  void aColumnThatIsLeftOutSaysWhy() throws IOException {
    Path notes =
        Files.writeString(
            folder.resolve("notes.csv"),
            "About;Which;Student;Written;From;Note\ncloth;Grey jersey;;2026-09-28 18:30;;Curls\n");
    Ran own = run("bring", "notes", notes.toString());
    assertThat(own.exit()).as(own.out() + own.err()).isZero();
    assertThat(own.out()).containsPattern("Written +note-written");
    assertThat(own.out()).containsPattern("Student +– left out: the other columns");
    Path other =
        Files.writeString(
            folder.resolve("other.csv"), "About;Which;Note;Shoe size\ncloth;Grey jersey;Thin;38\n");
    assertThat(run("bring", "notes", other.toString(), "--dry-run").out())
        .containsPattern("Shoe size +– left out: no field for it here; --map");
    Path late =
        Files.writeString(
            folder.resolve("late.csv"),
            "About;Which;Note;Written\ncloth;Grey jersey;Late;2126-09-28\n");
    refused(run("bring", "notes", late.toString()));
  }

  @Test
  void aRosterIsBroughtIn() throws IOException {
    Path roster = Files.writeString(folder.resolve("class.csv"), "Name,Code\nNuur Ebb,S09\n");
    Ran ran = run("bring", "roster", roster.toString());
    assertThat(ran.exit()).isZero();
    assertThat(ran.out()).contains("1 new").contains("bring undo");
  }

  @Test
  void whatIsMistypedIsRefusedWithWhatIsKnown() {
    Ran unknown = pieces("--map", "Z=grade");
    refused(unknown);
    assertThat(unknown.err()).contains("C=gauge:cm");
    refused(pieces("--map", "A=shoe-size"));
    refused(pieces("--map", "F=gauge:kg"));
    refused(run("bring", "pieces", text.toString(), "--days", "backwards"));
    refused(run("bring", "pieces", folder.resolve("gone.xlsx").toString()));
    refused(run("bring", "undo", "yesterday"));
  }
}
