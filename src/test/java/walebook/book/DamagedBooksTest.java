package walebook.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.open.SqliteCare;
import walebook.book.open.SqliteFiles;
import walebook.problem.Answer;
import walebook.record.SeamEnd;
import walebook.words.Words;

/**
 * Books damaged in seeded ways, as a worn stick or a cut copy damages them. Each is opened, rescued
 * or refused in a sentence, in bounded time, without any throwable, and the damaged file stays what
 * it was byte for byte. {@code -Dwalebook.mutations=2000} for the long form.
 */
class DamagedBooksTest {
  private static final int MUTATIONS = Integer.getInteger("walebook.mutations", 500);
  private static final long SEED = Long.getLong("walebook.seed", 20261005L);
  private static final Duration LONGEST = Duration.ofSeconds(20);
  private static final RescueNames NAMES =
      new RescueNames("Rescued book", "Lost term", "Lost class", "Lost student", "Lost cloth");
  private static final Words WORDS = Words.english();

  @TempDir static Path folder;
  private static byte[] whole = new byte[0];

  @BeforeAll
  static void make() throws Exception {
    Path file = folder.resolve("whole.walebook");
    try (Classroom room = Classroom.in(file)) {
      for (int i = 0; i < 60; i++) {
        room.book.pieces().add(room.piece(SeamEnd.GAVE, 120 + i));
      }
    }
    whole = Files.readAllBytes(file);
  }

  @Test
  void eachIsOpenedRescuedOrRefusedInASentence() throws Exception {
    Map<String, Integer> ends = new TreeMap<>();
    for (int i = 0; i < MUTATIONS; i++) {
      Random random = new Random(SEED + i);
      Damage way = Damage.inTurn(i);
      byte[] damaged = way.damage(whole.clone(), random);
      Path home = Files.createDirectory(folder.resolve("m" + i));
      Path file = Files.write(home.resolve("class.walebook"), damaged);
      long start = System.nanoTime();
      String end = end(file, damaged, way + " " + (SEED + i));
      ends.merge(way + " " + end, 1, Integer::sum);
      assertThat(Duration.ofNanos(System.nanoTime() - start)).as(way + " " + i).isLessThan(LONGEST);
      delete(home);
    }
    System.out.println("DamagedBooksTest seed " + SEED + ", " + MUTATIONS + " books: " + ends);
    assertThat(ends.keySet().toString()).contains("opened").contains("rescued").contains("refused");
  }

  private static String end(Path file, byte[] damaged, String as) throws Exception {
    Answer<Book> opened = new SqliteFiles().open(file, Classroom.CLOCK);
    if (opened.isGood()) {
      try (Book book = opened.value()) {
        return "opened, " + readAll(book);
      }
    }
    said(opened, as);
    assertThat(Files.readAllBytes(file)).as(as).isEqualTo(damaged);
    Path into = file.resolveSibling("rescued.walebook");
    Answer<RescueReport> rescued = new SqliteCare().rescue(file, into, NAMES, Classroom.CLOCK);
    assertThat(Files.readAllBytes(file)).as(as).isEqualTo(damaged);
    if (!rescued.isGood()) {
      said(rescued, as);
      assertThat(into).as(as).doesNotExist();
      return "refused " + opened.problems().get(0).code() + " " + rescued.problems().get(0).code();
    }
    assertThat(rescued.value().out()).as(as).isPositive();
    Answer<Book> again = new SqliteFiles().open(into, Classroom.CLOCK);
    assertThat(again.isGood()).as(as + again.problems()).isTrue();
    try (Book book = again.value()) {
      return "rescued, " + readAll(book);
    }
  }

  /** Reads what the places of the window read; damaged rows are named trouble, nothing else. */
  private static String readAll(Book book) {
    try {
      book.info();
      book.students().all();
      book.terms().all();
      book.classes().all();
      book.machines().all();
      book.cloths().all();
      book.packShelf().all();
      book.garments().all();
      book.pieces().list(PieceFilter.ALL);
      return "all read";
    } catch (BookTrouble e) {
      return "trouble " + e.code();
    }
  }

  private static void said(Answer<?> answer, String as) {
    assertThat(WORDS.say(answer.problems().get(0)))
        .as(as)
        .doesNotContain("[problem")
        .contains(".walebook");
  }

  private static void delete(Path home) throws Exception {
    try (var files = Files.walk(home)) {
      for (Path each : files.sorted(java.util.Comparator.reverseOrder()).toList()) {
        Files.delete(each);
      }
    }
  }

  @Test
  void everyRowOfAWholeBookWouldComeOut() throws Exception {
    Path file = Files.write(folder.resolve("copy.walebook"), whole);
    Path into = folder.resolve("all.walebook");
    RescueReport report = new SqliteCare().rescue(file, into, NAMES, Classroom.CLOCK).value();
    assertThat(report.lost()).isZero();
    assertThat(report.badPages()).isZero();
    assertThat(report.standIns()).isZero();
    assertThat(new SqliteCare().difference(file, into).value().isNone()).isTrue();
    List<RescueReport.Table> tables = report.tables();
    assertThat(tables).extracting(RescueReport.Table::name).contains("test_piece", "student");
  }
}
