package walebook.book.sqlite;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteOpenMode;

/**
 * Connections to a book's file with the settings that durability rests on: write-ahead log,
 * synchronous FULL (a commit is on the disk when it returns), foreign keys on.
 */
public final class SqliteLink {
  /** The application id in the header of each book: the letters WALE. */
  public static final int APPLICATION_ID = 0x57414C45;

  /** How many books can be attached at once. */
  public static final int MOST_ATTACHED = 120;

  private static final int BUSY_MS = 5000;

  /** Sixteen MB of 4 KiB pages, taken as they are read: a class's pieces stand all over a table. */
  private static final int READER_PAGES = 4096;

  private SqliteLink() {}

  /** The one connection that writes. */
  public static Connection writer(Path file) throws SQLException {
    return connect(file, settings(true));
  }

  /** A connection that only reads. */
  public static Connection reader(Path file) throws SQLException {
    SQLiteConfig settings = settings(true);
    settings.enforceForeignKeys(true);
    settings.setCacheSize(READER_PAGES);
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

  /** A writing connection that other books can be attached to, far more than the usual few. */
  public static Connection gatherer(Path file) throws SQLException {
    SQLiteConfig settings = settings(true);
    settings.setOpenMode(SQLiteOpenMode.OPEN_URI);
    settings.setPragma(SQLiteConfig.Pragma.LIMIT_ATTACHED, String.valueOf(MOST_ATTACHED));
    Connection link = connect(file, settings);
    // What a foreign file brings along must not run anything here.
    run(link, "PRAGMA trusted_schema = OFF");
    return link;
  }

  /** A connection to a file that is only looked at; nothing is written to it or beside it. */
  public static Connection onlyLook(Path file) throws SQLException {
    SQLiteConfig settings = new SQLiteConfig();
    settings.setReadOnly(true);
    settings.setOpenMode(SQLiteOpenMode.OPEN_URI);
    return settings.createConnection("jdbc:sqlite:" + still(file));
  }

  /** The name under which SQLite opens a file that nobody writes, leaving nothing beside it. */
  public static String still(Path file) {
    return "file:" + file.toAbsolutePath().toUri().getRawPath() + "?immutable=1";
  }

  /**
   * A connection that can't write, whatever happens: it does not even carry a log that was left
   * behind into the file, as any other would on closing.
   */
  public static Connection watcher(Path file) throws SQLException {
    SQLiteConfig settings = new SQLiteConfig();
    settings.setReadOnly(true);
    settings.setBusyTimeout(BUSY_MS);
    return connect(file, settings);
  }

  /** A connection that changes no setting of the file. */
  static Connection plain(Path file) throws SQLException {
    return connect(file, new SQLiteConfig());
  }

  /**
   * A connection to a file that nobody has yet and that is thrown away when it does not become
   * whole: it need not survive a crash before then.
   */
  static Connection scratch(Path file) throws SQLException {
    SQLiteConfig settings = new SQLiteConfig();
    settings.setJournalMode(SQLiteConfig.JournalMode.MEMORY);
    settings.setSynchronous(SQLiteConfig.SynchronousMode.OFF);
    settings.enforceForeignKeys(false);
    return connect(file, settings);
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

  /** Takes a transaction back; a full disk has ended it already, which must not hide why. */
  public static void rollBack(Connection link, Exception why) {
    try {
      run(link, "ROLLBACK");
    } catch (SQLException e) {
      why.addSuppressed(e);
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
