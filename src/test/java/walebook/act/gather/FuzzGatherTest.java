package walebook.act.gather;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.book.FullBook;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.book.Damage;
import walebook.book.PieceFilter;
import walebook.book.RawRows;
import walebook.book.gather.Choice;
import walebook.book.gather.Conflict;
import walebook.book.gather.FromBook;
import walebook.book.sqlite.SqliteLink;
import walebook.words.Words;

/**
 * Students' books spoiled in seeded ways, some as bytes, some as rows that no program of ours would
 * write: each is gathered or refused in a sentence, in bounded time. The tutor's book is what it
 * was byte for byte unless something came, and a whole book that can be read when it did. {@code
 * -Dwalebook.mutations=2000} for the long form.
 */
class FuzzGatherTest {
  private static final int BOOKS = Integer.getInteger("walebook.mutations", 200);
  private static final Duration LONGEST = Duration.ofSeconds(20);
  private static final Words WORDS = Words.english();
  private static final List<String> VALUES =
      List.of(
          "NULL",
          "''",
          "'x'",
          "' '",
          "-1",
          "0",
          "1e308",
          "9e999",
          "9223372036854775807",
          "'2026-13-45'",
          "'=1+1'",
          "'👩🏽‍🧵 ליאור'",
          "char(0)",
          "x'00ff'",
          "hex(zeroblob(50000))",
          "'{}'",
          "'[1]'",
          "'{\"test_piece\":[{}]}'",
          "'01a20000-0000-7000-8000-000000000000'");

  @TempDir Path folder;
  private Path tutor;
  private byte[] good = new byte[0];
  private byte[] ours = new byte[0];

  @BeforeEach
  void make() throws Exception {
    tutor = folder.resolve("tutor.walebook");
    FullBook.copyTo(tutor);
    Path student = Hall.copy(tutor, "student.walebook");
    Hall.work(
        student,
        book -> {
          var one = book.pieces().list(PieceFilter.ALL).get(3);
          book.bin().put("test_piece", one.id(), Hall.TUTOR);
          Hall.remark(book, "theirs", 1);
        });
    good = Files.readAllBytes(student);
    // The tutor's has half of the pieces only, so that there is something to come.
    try (Connection link = SqliteLink.migrator(tutor)) {
      for (String table :
          List.of("piece_pull", "fault_seen", "note", "photo", "value_mark", "criterion_tag")) {
        SqliteLink.run(link, "DELETE FROM " + table);
      }
      for (String table : List.of("photo_image", "piece_check", "feedback", "value_mark")) {
        SqliteLink.run(link, "DELETE FROM " + table);
      }
      SqliteLink.run(link, "UPDATE test_piece SET parent_id = NULL");
      SqliteLink.run(link, "DELETE FROM test_piece WHERE rowid % 2 = 0");
    }
    Hall.work(tutor, book -> assertThat(book.pieces().count(PieceFilter.ALL)).isPositive());
    ours = Files.readAllBytes(tutor);
  }

  @Test
  void eachSpoiledBookIsGatheredOrRefusedAndTheTutorsBookStaysWhole() throws Exception {
    long seed = Long.getLong("walebook.seed", new Random().nextLong());
    Map<String, Integer> ends = new TreeMap<>();
    System.out.println("FuzzGatherTest seed " + seed + ", books " + BOOKS);
    for (int i = 0; i < BOOKS; i++) {
      Random random = new Random(seed + i);
      Path spoiled = folder.resolve("s" + i + ".walebook");
      String how = spoil(spoiled, i, random);
      String as = "seed " + (seed + i) + ", book " + i + ", " + how;
      byte[] was = Files.readAllBytes(spoiled);
      long start = System.nanoTime();
      String end = gathered(spoiled, as);
      assertThat(Duration.ofNanos(System.nanoTime() - start)).as(as).isLessThan(LONGEST);
      assertThat(Arrays.equals(Files.readAllBytes(spoiled), was)).as(as).isTrue();
      ends.merge(how.replaceAll(":.*", "") + " " + end, 1, Integer::sum);
      Files.delete(spoiled);
      putBack();
    }
    System.out.println("FuzzGatherTest: " + ends);
    assertThat(ends.keySet().toString()).contains("came").contains("book.").contains("gather.");
  }

  private String spoil(Path file, int number, Random random) throws IOException {
    if (number % 3 == 0) {
      Damage way = Damage.inTurn(number / 3);
      Files.write(file, way.damage(good.clone(), random));
      return way.toString();
    }
    Files.write(file, good);
    try (Connection link = SqliteLink.migrator(file)) {
      SqliteLink.run(link, "PRAGMA ignore_check_constraints = ON");
      String done = number % 10 == 1 ? shape(link, random) : rows(link, random);
      SqliteLink.run(link, "PRAGMA journal_mode = DELETE");
      return done;
    } catch (SQLException e) {
      return "left as it was: " + e.getMessage();
    }
  }

  /** Some values of some rows, as if changed there; what the file itself refuses stays. */
  private static String rows(Connection link, Random random) throws SQLException {
    List<String> tables =
        RawRows.column(
            link,
            "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%'"
                + " ORDER BY name");
    StringBuilder done = new StringBuilder("values:");
    for (int i = random.nextInt(4); i >= 0; i--) {
      String table = tables.get(random.nextInt(tables.size()));
      List<String> columns =
          RawRows.column(link, "SELECT name FROM pragma_table_info('" + table + "')");
      String column = columns.get(random.nextInt(columns.size()));
      String value = VALUES.get(random.nextInt(VALUES.size()));
      String version = columns.contains("row_version") ? ", row_version = row_version + 1" : "";
      String sql =
          "UPDATE OR IGNORE "
              + table
              + " SET "
              + column
              + " = "
              + value
              + (column.equals("row_version") ? "" : version)
              + " WHERE id IN (SELECT id FROM "
              + table
              + " ORDER BY id LIMIT "
              + (1 + random.nextInt(5))
              + ")";
      if (random.nextInt(6) == 0) {
        sql = "DELETE FROM " + table + " WHERE id IN (SELECT id FROM " + table + " LIMIT 3)";
      }
      try {
        SqliteLink.run(link, sql);
        done.append(' ').append(sql);
      } catch (SQLException e) {
        done.append(" refused ").append(column);
      }
    }
    return done.toString();
  }

  private static String shape(Connection link, Random random) throws SQLException {
    List<String> ways =
        List.of(
            "PRAGMA user_version = 99",
            "PRAGMA user_version = 1",
            "PRAGMA user_version = -3",
            "PRAGMA application_id = 5",
            "DROP TABLE note",
            "ALTER TABLE cloth ADD COLUMN more TEXT",
            "CREATE VIEW v AS SELECT * FROM student",
            "CREATE TRIGGER t AFTER INSERT ON note BEGIN DELETE FROM student; END",
            "DROP INDEX test_piece_planned",
            "DELETE FROM book_info",
            "CREATE INDEX more ON student (name COLLATE NOCASE)");
    String way = ways.get(random.nextInt(ways.size()));
    SqliteLink.run(link, way);
    return "shape: " + way;
  }

  private String gathered(Path spoiled, String as) throws Exception {
    FromBook came;
    try (Book book = Hall.FILES.open(tutor, Classroom.CLOCK).value()) {
      came = Hall.gather(book, true, spoiled).books().get(0);
      if (came.problem() == null) {
        readAll(book, as);
        for (Conflict each : book.gathering().conflicts()) {
          book.gathering()
              .decide(each.id(), Choice.THEIRS, Hall.TUTOR)
              .problems()
              .forEach(problem -> assertThat(WORDS.say(problem)).doesNotContain("[problem"));
        }
        readAll(book, as);
      }
    } catch (RuntimeException e) {
      throw new AssertionError(as, e);
    }
    if (came.problem() != null) {
      assertThat(WORDS.say(came.problem())).as(as).doesNotContain("[problem");
      assertThat(Arrays.equals(Files.readAllBytes(tutor), ours)).as(as).isTrue();
      return came.problem().code();
    }
    try (Connection link = SqliteLink.migrator(tutor)) {
      assertThat(SqliteLink.ask(link, "PRAGMA integrity_check")).as(as).isEqualTo("ok");
      assertThat(SqliteLink.ask(link, "PRAGMA foreign_key_check")).as(as).isEmpty();
    }
    return "came";
  }

  /** What the window's places read; one row that is no record would shut a place for good. */
  private static void readAll(Book book, String as) {
    book.info();
    book.tutors().all();
    book.students().all();
    book.terms().all();
    book.machines().all();
    book.packShelf().all();
    book.garments().all();
    book.marks().all();
    book.bin().all();
    book.gathering().conflicts();
    book.cloths().all().forEach(each -> book.clothLog().readingsOf(each.id()));
    book.pieces()
        .list(PieceFilter.ALL)
        .forEach(
            each -> {
              book.photos().ofPiece(each.id());
              book.assessments().feedbackOn(each.id());
              book.notes().about(walebook.record.Note.About.PIECE, each.id());
            });
    book.classes()
        .all()
        .forEach(
            each -> {
              book.lessons().of(each.id());
              book.assessments().checksOf(each.id());
              book.assessments().criteriaOf(each.id());
              book.enrolments().everyoneOf(each.id());
              book.lessons().of(each.id()).forEach(lesson -> book.lessons().planOf(lesson.id()));
            });
    book.history().latest(200).forEach(each -> book.history().of(each.entity(), each.entityId()));
    assertThat(book.file()).as(as).exists();
  }

  /** The tutor's book as it was, older than its first routine copy, so that no other is made. */
  private void putBack() throws IOException {
    Files.write(tutor, ours);
    Files.setLastModifiedTime(tutor, FileTime.from(Instant.EPOCH));
    Path backups = tutor.resolveSibling(tutor.getFileName() + ".backups");
    try (var all = Files.list(backups)) {
      for (Path each : all.sorted().skip(1).toList()) {
        Files.delete(each);
      }
    }
  }
}
