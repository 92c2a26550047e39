package walebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.book.OwnProcess;
import walebook.book.PieceFilter;
import walebook.book.open.SqliteFiles;
import walebook.record.TestPiece;

/**
 * A save that was acknowledged survives the end of the process: the command line is started as a
 * process of its own, saves pieces in a loop, and is killed (SIGKILL) at a random moment, over and
 * over on the same books.
 */
class KillTest {
  private static final int KILLS = Integer.getInteger("walebook.kills", 50);
  private static final int BOOKS = 2;
  private static final long LONGEST_LIFE_MS = 150;
  private static final String LINE =
      "cloth=\"Grey jersey\" grain=course stitch=304 machine=4 dial-width=2.5 dial-length=2.5"
          + " gauge=100 end=held end-length=%d end-2=gave end-length-2=%d end-3=held"
          + " end-length-3=%d faults=wavy-seam,all-along,1,sewn;puckering,start,2,pressed"
          + " remark=\"piece %d\"";

  @TempDir Path folder;
  private OwnProcess program;

  @BeforeEach
  void prepare() throws Exception {
    Path file = folder.resolve("first.walebook");
    Classroom.in(file).close();
    program = OwnProcess.preparedBy(folder.resolve("process"), line(1), logging(file));
  }

  /** Both cores have a book of their own to kill at: a life is mostly the process's start. */
  @Test
  void everyAcknowledgedPieceIsThereAfterEachKill() throws Exception {
    long seed = new Random().nextLong();
    System.out.println("KillTest seed " + seed + ", kills " + KILLS);
    ExecutorService cores = Executors.newFixedThreadPool(BOOKS);
    try {
      List<Future<Integer>> books = new ArrayList<>();
      for (int i = 0; i < BOOKS; i++) {
        Path own = Files.createDirectory(folder.resolve("book-" + i));
        Random random = new Random(seed + i);
        books.add(cores.submit(() -> lives(own.resolve("class.walebook"), random)));
      }
      int acknowledged = 0;
      for (Future<Integer> each : books) {
        acknowledged += each.get();
      }
      System.out.println("KillTest: " + acknowledged + " pieces acknowledged, all there");
      assertThat(acknowledged).isGreaterThan(KILLS);
    } finally {
      cores.shutdownNow();
    }
  }

  /** One book's share of the kills; returns how many pieces were acknowledged, all of them kept. */
  private int lives(Path file, Random random) throws Exception {
    Classroom.in(file).close();
    Map<String, Integer> acknowledged = new LinkedHashMap<>();
    int next = 0;
    for (int kill = 0; kill < (KILLS + BOOKS - 1) / BOOKS; kill++) {
      next = life(file, next, random, acknowledged);
      wholeAfterAll(file, acknowledged);
    }
    return acknowledged.size();
  }

  /** One process from its start to its kill; returns the number of the next piece. */
  private int life(Path file, int first, Random random, Map<String, Integer> acknowledged)
      throws Exception {
    Process process = program.start(errorsOf(file), logging(file));
    int written = first;
    // Now and then the kill comes before the book is open; mostly between two saves or in one.
    boolean early = random.nextInt(10) == 0;
    CountDownLatch saved = new CountDownLatch(1);
    Thread reader = new Thread(() -> read(process, first, acknowledged, saved), "acknowledged");
    reader.start();
    Thread killer = new Thread(() -> killLater(process, early, saved, random.nextLong()), "killer");
    killer.start();
    try (BufferedWriter in =
        new BufferedWriter(
            new OutputStreamWriter(process.getOutputStream(), StandardCharsets.UTF_8))) {
      while (process.isAlive()) {
        in.write(line(written++));
        in.newLine();
        in.flush();
      }
    } catch (IOException e) {
      // The process was killed while it was being written to: that is what this is about.
      assertThat(e).hasMessageMatching("(?i).*(broken pipe|stream closed).*");
    }
    killer.join();
    assertThat(process.waitFor(30, TimeUnit.SECONDS)).isTrue();
    reader.join();
    assertThat(process.exitValue()).as("killed, not ended: " + errors(file)).isEqualTo(137);
    return written;
  }

  private static String[] logging(Path file) {
    return new String[] {
      "walebook.Walebook",
      "piece",
      "log",
      "--book",
      file.toString(),
      "--student",
      "S01",
      "--sure",
      "--from",
      "-"
    };
  }

  private static Path errorsOf(Path file) {
    return file.resolveSibling("errors.txt");
  }

  private static String errors(Path file) throws IOException {
    return Files.readString(errorsOf(file));
  }

  private static String line(int number) {
    return LINE.formatted(150 + number % 40, 130 + number % 40, 151 + number % 40, number);
  }

  private static void read(
      Process process, int first, Map<String, Integer> acknowledged, CountDownLatch saved) {
    int number = first;
    try (BufferedReader out =
        new BufferedReader(
            new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
      // A code without its line's end was cut by the kill and counts as not acknowledged.
      StringBuilder code = new StringBuilder();
      for (int sign = out.read(); sign >= 0; sign = out.read()) {
        if (sign == '\n') {
          acknowledged.put(code.toString().strip(), number++);
          code.setLength(0);
          saved.countDown();
        } else {
          code.append((char) sign);
        }
      }
    } catch (IOException e) {
      saved.countDown();
    }
    saved.countDown();
  }

  private static void killLater(Process process, boolean early, CountDownLatch saved, long seed) {
    Random random = new Random(seed);
    try {
      if (!early) {
        saved.await(1, TimeUnit.MINUTES);
      }
      long wait = random.nextInt(1 + (int) LONGEST_LIFE_MS * 1000);
      long until = System.nanoTime() + wait * 1000;
      while (System.nanoTime() < until) {
        LockSupport.parkNanos(until - System.nanoTime());
      }
      process.destroyForcibly();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** The book opens, nothing bars the way, and every piece in it is whole. */
  private static void wholeAfterAll(Path file, Map<String, Integer> acknowledged) {
    var opened = new SqliteFiles().open(file, Classroom.CLOCK);
    assertThat(opened.isGood()).as("opens after a kill: %s", opened.problems()).isTrue();
    try (Book book = opened.value()) {
      Map<String, TestPiece> there = new LinkedHashMap<>();
      book.pieces().list(PieceFilter.ALL).forEach(each -> there.put(each.code(), each));
      assertThat(there.keySet()).containsAll(acknowledged.keySet());
      there.forEach(
          (code, piece) -> {
            assertThat(piece.measure().pulls()).hasSize(3);
            assertThat(piece.seen().faults()).hasSize(2);
            assertThat(piece.whose().sewnOn()).isAfter(LocalDate.of(2020, 1, 1));
            Integer number = acknowledged.get(code);
            if (number != null) {
              assertThat(piece.seen().remark()).isEqualTo("piece " + number);
              assertThat(piece.measure().pulls().get(0).endMm()).isEqualTo(150 + number % 40);
            }
          });
      assertThat(book.drafts().of("piece")).isEmpty();
    }
  }
}
