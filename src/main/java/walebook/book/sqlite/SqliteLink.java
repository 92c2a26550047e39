package walebook.book.sqlite;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.sqlite.SQLiteConfig;

/**
 * Connections to a book's file with the settings that durability rests on: write-ahead log,
 * synchronous FULL (a commit is on the disk when it returns), foreign keys on.
 */
public final class SqliteLink {
  /** The application id in the header of each book: the letters WALE. */
  public static final int APPLICATION_ID = 0x57414C45;

  private static final int BUSY_MS = 5000;

  private SqliteLink() {}

  /** The one connection that writes. */
  public static Connection writer(Path file) throws SQLException {
    return connect(file, settings(true));
  }

  /** A connection that only reads. */
  public static Connection reader(Path file) throws SQLException {
    SQLiteConfig settings = settings(true);
    settings.enforceForeignKeys(true);
    Connection reader = connect(file, settings);
    run(reader, "PRAGMA query_only = ON");
    return reader;
  }

  /**
   * A connection for migrations: foreign keys off, since rebuilding a parent table with them on
   * empties its children without a word.
   */
  public static Connection migrator(Path file) throws SQLException {
    return connect(file, settings(false));
  }

  private static SQLiteConfig settings(boolean foreignKeys) {
    SQLiteConfig settings = new SQLiteConfig();
    settings.setJournalMode(SQLiteConfig.JournalMode.WAL);
    settings.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
    settings.enforceForeignKeys(foreignKeys);
    settings.setBusyTimeout(BUSY_MS);
    return settings;
  }

  private static Connection connect(Path file, SQLiteConfig settings) throws SQLException {
    return settings.createConnection("jdbc:sqlite:" + file.toAbsolutePath());
  }

  public static void run(Connection link, String sql) throws SQLException {
    try (Statement statement = link.createStatement()) {
      statement.executeUpdate(sql);
    }
  }

  public static String ask(Connection link, String sql) throws SQLException {
    try (Statement statement = link.createStatement();
        ResultSet answer = statement.executeQuery(sql)) {
      return answer.next() ? String.valueOf(answer.getString(1)) : "";
    }
  }

  /**
   * Writes the file anew, so that nothing that was deleted stays in free pages, and empties the log
   * beside it. Not inside a transaction.
   */
  public static void scrub(Connection link) throws SQLException {
    run(link, "PRAGMA secure_delete = ON");
    run(link, "VACUUM");
    String busy = ask(link, "PRAGMA wal_checkpoint(TRUNCATE)");
    if (!busy.equals("0")) {
      throw new SQLException("a reader holds the log");
    }
  }
}
