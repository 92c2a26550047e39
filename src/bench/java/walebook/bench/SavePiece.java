package walebook.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import walebook.act.book.MakeDemoBook;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.book.PieceFilter;
import walebook.book.open.SqliteFiles;
import walebook.book.sqlite.SqliteLink;
import walebook.record.Measure;
import walebook.record.Parent;
import walebook.record.PieceCode;
import walebook.record.Seen;
import walebook.record.Stamp;
import walebook.record.TestPiece;
import walebook.record.Whose;

/**
 * A save of a test piece beside a bare insert of the same row: same schema, same indexes, same
 * settings of the file, by turns in one run, so that the disk treats both alike. Prints medians and
 * their ratio.
 */
public final class SavePiece {
  private static final int WARM = 600;
  private static final int MEASURED = 3000;

  private SavePiece() {}

  public static void main(String[] args) throws Exception {
    Path folder = Files.createTempDirectory("walebook-bench");
    try {
      run(folder);
    } finally {
      Folders.delete(folder);
    }
  }

  private static void run(Path folder) throws IOException, SQLException {
    SqliteFiles files = new SqliteFiles();
    Path ours = folder.resolve("ours.walebook");
    Path bare = folder.resolve("bare.walebook");
    Clock clock = Clock.systemUTC();
    new MakeDemoBook(files, clock).make(ours, MakeDemoBook.SEED).value().close();
    try (Book book = files.open(ours, clock).value()) {
      book.copyTo(bare);
      TestPiece like = plain(book);
      List<Object> row = rowOf(bare, like);
      Random random = new Random(11);
      Set<String> codes = new HashSet<>();
      book.pieces().list(PieceFilter.ALL).forEach(each -> codes.add(each.code()));
      List<Long> saves = new ArrayList<>();
      List<Long> inserts = new ArrayList<>();
      try (Connection link = SqliteLink.writer(bare);
          PreparedStatement insert = prepare(link, row.size())) {
        for (int i = 0; i < WARM + MEASURED; i++) {
          String code = code(random, codes);
          TestPiece piece = again(like, code, clock);
          if (i % 2 == 0) {
            saves.add(timed(() -> book.pieces().add(piece)));
            inserts.add(insertTimed(insert, row, piece));
          } else {
            inserts.add(insertTimed(insert, row, piece));
            saves.add(timed(() -> book.pieces().add(piece)));
          }
        }
      }
      print(saves.subList(WARM, saves.size()), inserts.subList(WARM, inserts.size()));
    }
  }

  /** A piece whose save is one row: one pull, no faults, no plan, no parent. */
  private static TestPiece plain(Book book) {
    return book.pieces().list(PieceFilter.ALL).stream()
        .filter(each -> each.measure().pulls().size() == 1 && each.whose().plannedId() != null)
        .filter(each -> each.parent() == null)
        .findFirst()
        .orElseThrow();
  }

  private static TestPiece again(TestPiece like, String code, Clock clock) {
    Whose was = like.whose();
    Measure measure = like.measure();
    Parent none = null;
    return new TestPiece(
        Ids.next(),
        code,
        new Whose(was.classId(), was.studentId(), was.lessonId(), null, was.sewnOn()),
        like.cloth(),
        like.setting(),
        measure,
        Seen.NOTHING,
        none,
        Stamp.fresh(clock.instant()));
  }

  private static String code(Random random, Set<String> taken) {
    String code = PieceCode.draw(random);
    while (!taken.add(code)) {
      code = PieceCode.draw(random);
    }
    return code;
  }

  private static List<Object> rowOf(Path file, TestPiece like) throws SQLException {
    try (Connection link = SqliteLink.reader(file);
        PreparedStatement ask = link.prepareStatement("SELECT * FROM test_piece WHERE id = ?")) {
      ask.setString(1, like.id().toString());
      try (ResultSet found = ask.executeQuery()) {
        found.next();
        Object[] row = new Object[found.getMetaData().getColumnCount()];
        for (int i = 0; i < row.length; i++) {
          row[i] = found.getObject(i + 1);
        }
        row[columns(link).indexOf("planned_id")] = null;
        return Arrays.asList(row);
      }
    }
  }

  private static List<String> columns(Connection link) throws SQLException {
    List<String> names = new ArrayList<>();
    try (Statement ask = link.createStatement();
        ResultSet found =
            ask.executeQuery("SELECT name FROM pragma_table_info('test_piece') ORDER BY cid")) {
      while (found.next()) {
        names.add(found.getString(1));
      }
    }
    return names;
  }

  private static PreparedStatement prepare(Connection link, int columns) throws SQLException {
    String marks = String.join(", ", Collections.nCopies(columns, "?"));
    return link.prepareStatement("INSERT INTO test_piece VALUES (" + marks + ")");
  }

  /** Key and code come first in the table; the rest of the row is the same each time. */
  private static long insertTimed(PreparedStatement insert, List<Object> row, TestPiece piece)
      throws SQLException {
    long begin = System.nanoTime();
    insert.setString(1, piece.id().toString());
    insert.setString(2, piece.code());
    for (int i = 2; i < row.size(); i++) {
      insert.setObject(i + 1, row.get(i));
    }
    insert.executeUpdate();
    return System.nanoTime() - begin;
  }

  private static long timed(Runnable work) {
    long begin = System.nanoTime();
    work.run();
    return System.nanoTime() - begin;
  }

  private static void print(List<Long> saves, List<Long> inserts) {
    double ours = median(saves);
    double bare = median(inserts);
    System.out.println(
        String.format(
            Locale.ROOT,
            "save %.1f us, bare insert %.1f us (medians of %d), ratio %.2f, wanted under 1.3",
            ours / 1000,
            bare / 1000,
            saves.size(),
            ours / bare));
  }

  private static double median(List<Long> times) {
    List<Long> sorted = times.stream().sorted().toList();
    return sorted.get(sorted.size() / 2);
  }
}
