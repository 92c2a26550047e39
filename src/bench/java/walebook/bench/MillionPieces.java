package walebook.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import walebook.act.book.MakeDemoBook;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.book.open.SqliteFiles;
import walebook.book.sqlite.SqliteLink;
import walebook.record.PieceCode;
import walebook.record.SchoolClass;
import walebook.record.Stamp;
import walebook.record.Student;

/**
 * A book of a million test pieces: the demo class over and over, each time with students of its
 * own, eight classes sewing side by side as in a school, so that no class's rows stand together.
 */
final class MillionPieces {
  static final int PIECES = 1_000_000;
  private static final int AT_ONCE = 8;

  private final Random random = new Random(17);
  private final Set<String> codes = new HashSet<>();
  private final List<UUID> classes = new ArrayList<>();

  /** Makes the book and gives the keys of its classes. */
  List<UUID> make(Path file, SqliteFiles files) throws IOException, SQLException {
    Clock clock = Clock.systemUTC();
    new MakeDemoBook(files, clock).make(file, MakeDemoBook.SEED).value().close();
    try (Book book = files.open(file, clock).value()) {
      SchoolClass like = book.classes().all().get(0);
      List<Student> students = book.enrolments().everyoneOf(like.id());
      List<Object[]> rows = rows(file, like.id());
      rows.forEach(row -> codes.add(String.valueOf(row[1])));
      int wanted = (PIECES + rows.size() - 1) / rows.size();
      for (int made = 0; made < wanted; made += AT_ONCE) {
        List<Map<String, String>> cohort = cohort(book, like, students, clock);
        fill(file, rows, cohort);
      }
    }
    try (Connection link = SqliteLink.migrator(file);
        Statement run = link.createStatement()) {
      run.execute("ANALYZE");
    }
    return classes;
  }

  /** Eight new classes; for each, which keys stand in the place of the demo's. */
  private List<Map<String, String>> cohort(
      Book book, SchoolClass like, List<Student> students, Clock clock) {
    return book.inOneStep(
        () -> {
          List<Map<String, String>> cohort = new ArrayList<>();
          Stamp stamp = Stamp.fresh(clock.instant());
          for (int i = 0; i < AT_ONCE; i++) {
            UUID id = Ids.next();
            String name = like.name() + " " + (classes.size() + 1);
            book.classes().add(new SchoolClass(id, like.termId(), like.tutorId(), name, "", stamp));
            Map<String, String> keys = new HashMap<>();
            keys.put(like.id().toString(), id.toString());
            for (Student each : students) {
              Student other =
                  new Student(Ids.next(), each.name(), each.alias(), each.tier(), stamp);
              book.students().add(other);
              book.enrolments().join(id, other.id(), java.time.LocalDate.of(2026, 9, 14));
              keys.put(each.id().toString(), other.id().toString());
            }
            classes.add(id);
            cohort.add(keys);
          }
          return cohort;
        });
  }

  private static List<Object[]> rows(Path file, UUID classId) throws SQLException {
    try (Connection link = SqliteLink.reader(file)) {
      return BareRows.rows(link, classId);
    }
  }

  private void fill(Path file, List<Object[]> rows, List<Map<String, String>> cohort)
      throws SQLException {
    String marks = String.join(", ", java.util.Collections.nCopies(rows.get(0).length, "?"));
    try (Connection link = SqliteLink.migrator(file);
        Statement run = link.createStatement();
        PreparedStatement insert =
            link.prepareStatement("INSERT INTO test_piece VALUES (" + marks + ")")) {
      run.execute("PRAGMA synchronous = OFF");
      run.execute("BEGIN");
      for (Object[] row : rows) {
        for (Map<String, String> keys : cohort) {
          insert.setString(1, Ids.next().toString());
          insert.setString(2, code());
          for (int i = 2; i < row.length; i++) {
            Object value = row[i];
            String other = value instanceof String text ? keys.get(text) : null;
            insert.setObject(i + 1, other == null ? value : other);
          }
          insert.executeUpdate();
        }
      }
      run.execute("COMMIT");
    }
  }

  private String code() {
    String code = PieceCode.draw(random);
    while (!codes.add(code)) {
      code = PieceCode.draw(random);
    }
    return code;
  }
}
