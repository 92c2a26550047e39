package walebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.book.OwnProcess;
import walebook.book.PieceFilter;
import walebook.book.open.SqliteFiles;
import walebook.book.sqlite.SqliteLink;
import walebook.record.SeamEnd;
import walebook.record.TestPiece;

/**
 * A gathering that is killed (SIGKILL) at a random moment leaves the book as it was before or as it
 * is after, never between.
 */
class KillGatheringTest {
  private static final int KILLS = Integer.getInteger("walebook.gather-kills", 20);
  private static final int PIECES = 60;

  @TempDir Path folder;

  @Test
  void aKilledGatheringIsWholeOrNotAtAll() throws Exception {
    Path tutor = folder.resolve("tutor.walebook");
    Classroom room = Classroom.in(tutor);
    room.close();
    Path students = Files.createDirectory(folder.resolve("students"));
    for (int i = 0; i < 3; i++) {
      Path own = Files.copy(tutor, students.resolve("s" + i + ".walebook"));
      fill(own, room);
    }
    long seed = new Random().nextLong();
    System.out.println("KillGatheringTest seed " + seed + ", kills " + KILLS);
    Random random = new Random(seed);
    Path whole = Files.copy(tutor, folder.resolve("whole.walebook"));
    Path first = Files.copy(tutor, folder.resolve("first.walebook"));
    OwnProcess program =
        OwnProcess.preparedBy(folder.resolve("process"), "", gathering(first, students));
    Path errors = folder.resolve("errors.txt");
    long begin = System.nanoTime();
    Process untouched = program.start(errors, gathering(whole, students));
    assertThat(untouched.waitFor(2, TimeUnit.MINUTES)).isTrue();
    long lasts = System.nanoTime() - begin;
    assertThat(untouched.exitValue()).isZero();
    int killed = 0;
    for (int kill = 0; kill < KILLS; kill++) {
      Path file = Files.copy(tutor, folder.resolve("k" + kill + ".walebook"));
      Process process = program.start(errors, gathering(file, students));
      long until = System.nanoTime() + (long) (lasts * (0.3 + 0.7 * random.nextDouble()));
      while (process.isAlive() && System.nanoTime() < until) {
        LockSupport.parkNanos(1_000_000);
      }
      process.destroyForcibly();
      assertThat(process.waitFor(30, TimeUnit.SECONDS)).isTrue();
      killed += process.exitValue() == 137 ? 1 : 0;
      beforeOrAfter(file);
    }
    assertThat(killed).as("some were really killed").isPositive();
  }

  private static void fill(Path file, Classroom room) {
    try (Book book = new SqliteFiles().open(file, Classroom.CLOCK).value()) {
      Random bytes = new Random(3);
      book.inOneStep(
          () -> {
            for (int i = 0; i < PIECES; i++) {
              TestPiece piece = room.piece(SeamEnd.GAVE, 120 + i % 30);
              book.pieces().add(piece);
              byte[] image = new byte[60_000];
              bytes.nextBytes(image);
              book.photos().add(Classroom.photo(piece.id()), image);
            }
            return file;
          });
    }
  }

  private static String[] gathering(Path file, Path students) {
    return new String[] {
      "walebook.Walebook",
      "gather",
      "books",
      "--book",
      file.toString(),
      "--from",
      students.toString()
    };
  }

  private static void beforeOrAfter(Path file) throws Exception {
    var opened = new SqliteFiles().open(file, Classroom.CLOCK);
    assertThat(opened.isGood()).as("opens after a kill: %s", opened.problems()).isTrue();
    try (Book book = opened.value()) {
      assertThat(book.pieces().count(PieceFilter.ALL)).isIn(0, 3 * PIECES);
    }
    try (Connection link = SqliteLink.migrator(file)) {
      assertThat(SqliteLink.ask(link, "PRAGMA quick_check")).isEqualTo("ok");
      assertThat(SqliteLink.ask(link, "PRAGMA foreign_key_check")).isEmpty();
      assertThat(
              SqliteLink.ask(link, "SELECT count(*) FROM photo_image WHERE length(image) = 60000"))
          .isEqualTo(SqliteLink.ask(link, "SELECT count(*) FROM test_piece"));
    }
  }
}
