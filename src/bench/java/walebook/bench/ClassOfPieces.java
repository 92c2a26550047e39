package walebook.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import walebook.act.book.MakeDemoBook;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.book.open.SqliteFiles;
import walebook.book.sqlite.SqliteLink;
import walebook.record.PieceCode;

/** The demo class with its own pieces over and over, until it has so many. */
final class ClassOfPieces {
  private final int pieces;
  private final Random random = new Random(19);

  ClassOfPieces(int pieces) {
    this.pieces = pieces;
  }

  /** Makes the book and gives the key of its class. */
  UUID make(Path file, SqliteFiles files) throws IOException, SQLException {
    Clock clock = Clock.systemUTC();
    UUID id;
    try (Book book = new MakeDemoBook(files, clock).make(file, MakeDemoBook.SEED).value()) {
      id = book.classes().all().get(0).id();
    }
    fill(file, id);
    return id;
  }

  private void fill(Path file, UUID classId) throws SQLException {
    try (Connection link = SqliteLink.migrator(file);
        Statement run = link.createStatement()) {
      run.execute("PRAGMA synchronous = OFF");
      run.execute("BEGIN");
      List<Object[]> rows = BareRows.rows(link, classId);
      Set<String> codes = new HashSet<>();
      rows.forEach(row -> codes.add(String.valueOf(row[1])));
      String marks = String.join(", ", java.util.Collections.nCopies(rows.get(0).length, "?"));
      try (PreparedStatement insert =
          link.prepareStatement("INSERT INTO test_piece VALUES (" + marks + ")")) {
        for (int i = rows.size(); i < pieces; i++) {
          insert(insert, rows.get(i % rows.size()), codes);
        }
      }
      run.execute("COMMIT");
      run.execute("ANALYZE");
    }
  }

  private void insert(PreparedStatement insert, Object[] row, Set<String> codes)
      throws SQLException {
    String code = PieceCode.draw(random);
    while (!codes.add(code)) {
      code = PieceCode.draw(random);
    }
    insert.setString(1, Ids.next().toString());
    insert.setString(2, code);
    for (int i = 2; i < row.length; i++) {
      insert.setObject(i + 1, row[i]);
    }
    insert.executeUpdate();
  }
}
