package walebook.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.open.SqliteCare;
import walebook.book.open.SqliteFiles;
import walebook.book.sqlite.Migrations;
import walebook.book.sqlite.SqliteLink;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Unit;
import walebook.words.Words;

/**
 * What is no book, or none that can be opened now, is refused with its reason and left as it is.
 */
class OpeningTest {
  private static final Words WORDS = Words.english();

  @TempDir Path folder;

  private static Problem refused(Path file) {
    Answer<Book> opened = new SqliteFiles().open(file, Classroom.CLOCK);
    assertThat(opened.isGood()).isFalse();
    Problem problem = opened.problems().get(0);
    assertThat(problem.place()).isEqualTo(new Place.Path(file.toString()));
    assertThat(WORDS.say(problem)).contains(file.toString()).doesNotContain("[problem.", "***");
    return problem;
  }

  private void refusedUnchanged(String code, Path file) throws IOException {
    byte[] before = Files.readAllBytes(file);
    assertThat(refused(file).code()).isEqualTo(code);
    assertThat(Files.readAllBytes(file)).isEqualTo(before);
    assertThat(Files.exists(Path.of(file + ".lock"))).isFalse();
  }

  private Path goodBook() {
    Path file = folder.resolve("good.walebook");
    Classroom.in(file).close();
    return file;
  }

  private void run(Path file, String sql) throws Exception {
    try (var link = SqliteLink.migrator(file)) {
      SqliteLink.run(link, sql);
      SqliteLink.ask(link, "PRAGMA wal_checkpoint(TRUNCATE)");
    }
  }

  @Test
  void aFolder() {
    assertThat(refused(folder).code()).isEqualTo("book.is-folder");
  }

  @Test
  void nothingThere() {
    assertThat(refused(folder.resolve("none.walebook")).code()).isEqualTo("book.missing");
  }

  @Test
  void aTextFileNamedAsABook() throws Exception {
    Path file = Files.writeString(folder.resolve("text.walebook"), "Dear diary,\n".repeat(50));
    refusedUnchanged("book.not-a-book", file);
  }

  @Test
  void anEmptyFile() throws Exception {
    refusedUnchanged("book.empty-file", Files.createFile(folder.resolve("empty.walebook")));
  }

  @Test
  void theBeginningOfABook() throws Exception {
    byte[] whole = Files.readAllBytes(goodBook());
    Path stub = Files.write(folder.resolve("stub.walebook"), Arrays.copyOf(whole, 60));
    refusedUnchanged("book.damaged", stub);
  }

  @Test
  void halfABook() throws Exception {
    byte[] whole = Files.readAllBytes(goodBook());
    Path half = folder.resolve("half.walebook");
    Files.write(half, Arrays.copyOf(whole, whole.length / 2));
    refusedUnchanged("book.damaged", half);
  }

  @Test
  void aBookWithOverwrittenPages() throws Exception {
    byte[] whole = Files.readAllBytes(goodBook());
    Arrays.fill(whole, 4096, whole.length, (byte) 0x5a);
    refusedUnchanged("book.damaged", Files.write(folder.resolve("worn.walebook"), whole));
  }

  /** The newest copy's day is said, and no copies are spoken of where there are none. */
  @Test
  void aWornBookTellsOfItsCopiesOnlyWhereThereAreSome() throws Exception {
    Path file = goodBook();
    byte[] whole = Files.readAllBytes(file);
    byte[] worn = whole.clone();
    Arrays.fill(worn, 4096, whole.length, (byte) 0x5a);
    Files.write(file, worn);
    assertThat(WORDS.say(refused(file))).contains("damaged").doesNotContain("cop", "backup");
    Files.write(file, whole);
    Clock earlier = Clock.offset(Classroom.CLOCK, Duration.ofDays(-3));
    for (Clock at : List.of(earlier, Classroom.CLOCK)) {
      assertThat(new SqliteCare().backUp(file, BookCopy.Why.ASKED, null, at).isGood()).isTrue();
    }
    Files.write(file, worn);
    refusedUnchanged("book.damaged-copied", file);
    String day = LocalDate.ofInstant(Classroom.NOW, Classroom.CLOCK.getZone()).toString();
    assertThat(WORDS.say(refused(file))).contains(day, "backups");
  }

  @Test
  void anotherProgramsFile() throws Exception {
    Path file = goodBook();
    run(file, "PRAGMA application_id = 7");
    refusedUnchanged("book.other-program", file);
  }

  @Test
  void aNewerProgramsBook() throws Exception {
    Path file = goodBook();
    run(file, "PRAGMA user_version = " + (Migrations.newest() + 1));
    refusedUnchanged("book.newer", file);
  }

  @Test
  void aBookThatIsOpenAlready() {
    try (Classroom room = Classroom.in(folder.resolve("open.walebook"))) {
      assertThat(refused(room.book.file()).code()).isEqualTo("book.open-elsewhere");
      room.book.pieces().add(room.piece(walebook.record.SeamEnd.GAVE, 130));
    }
  }

  @Test
  void aBookThatAnotherProcessHasOpen() throws Exception {
    Path file = goodBook();
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    Process other =
        new ProcessBuilder(
                java,
                "-cp",
                System.getProperty("java.class.path"),
                "walebook.Walebook",
                "piece",
                "log",
                "--book",
                file.toString(),
                "--student",
                "S01",
                "--from",
                "-")
            .redirectError(folder.resolve("errors.txt").toFile())
            .start();
    try (var in = other.outputWriter(StandardCharsets.UTF_8);
        var out = other.inputReader(StandardCharsets.UTF_8)) {
      in.write("cloth=\"Grey jersey\" grain=course stitch=304\n");
      in.flush();
      assertThat(out.readLine()).as("the other has it open").hasSize(6);
      assertThat(refused(file).code()).isEqualTo("book.open-elsewhere");
    }
    assertThat(other.waitFor()).isZero();
    new SqliteFiles().open(file, Classroom.CLOCK).value().close();
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void aPlaceWhereNothingCanBeWritten() {
    Path file = Path.of("/proc/class.walebook");
    Answer<Book> made = new SqliteFiles().make(file, "Pier hall", false, Unit.MM, Classroom.CLOCK);
    assertThat(made.problems().get(0).code()).isEqualTo("book.folder-read-only");
    assertThat(WORDS.say(made.problems().get(0))).contains("/proc/class.walebook");
  }

  @Test
  void aNewBookNeedsAFolderAFreeNameAndAName() {
    Path lost = folder.resolve("nowhere/class.walebook");
    assertThat(codeOfMaking(lost, "Pier hall")).isEqualTo("book.no-folder");
    assertThat(codeOfMaking(goodBook(), "Pier hall")).isEqualTo("book.exists");
    assertThat(codeOfMaking(folder.resolve("b.walebook"), " ")).isEqualTo("text.empty");
  }

  private static String codeOfMaking(Path file, String name) {
    Answer<Book> made = new SqliteFiles().make(file, name, false, Unit.MM, Classroom.CLOCK);
    assertThat(made.isGood()).isFalse();
    assertThat(WORDS.say(made.problems().get(0))).doesNotContain("[problem.");
    return made.problems().get(0).code();
  }
}
