package walebook.book.sqlite;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/** Whether a file is a whole book, found without writing a byte to it. */
public final class BookCheck {

  /** What a file is. */
  public enum Kind {
    WHOLE,
    OTHER_PROGRAM,
    NEWER,
    DAMAGED
  }

  /**
   * What was found.
   *
   * @param shape the number of the book's shape; 0 when unknown
   * @param says what is damaged, in the database's words; empty when nothing is
   */
  public record Finding(Kind kind, int shape, String says) {}

  private BookCheck() {}

  /**
   * Takes back what a killed process left half written, as the database itself would: only a file
   * that has a journal of such a change beside it is written to.
   */
  public static void rollBack(Path file) throws SQLException {
    if (Files.exists(file.resolveSibling(file.getFileName() + "-journal"))) {
      try (Connection link = SqliteLink.plain(file)) {
        SqliteLink.ask(link, "SELECT count(*) FROM sqlite_schema");
      }
    }
  }

  /** Looks at a file: whose it is, its shape, then page by page and reference by reference. */
  public static Finding of(Path file) throws SQLException {
    try (Connection link = SqliteLink.watcher(file)) {
      if (Integer.parseInt(SqliteLink.ask(link, "PRAGMA application_id"))
          != SqliteLink.APPLICATION_ID) {
        return new Finding(Kind.OTHER_PROGRAM, 0, "");
      }
      int shape = Migrations.shapeOf(link);
      if (shape > Migrations.newest()) {
        return new Finding(Kind.NEWER, shape, "");
      }
      String wrong = wrong(link, shape);
      return new Finding(wrong.isEmpty() ? Kind.WHOLE : Kind.DAMAGED, shape, wrong);
    }
  }

  private static String wrong(Connection link, int shape) throws SQLException {
    if (shape < 1) {
      return "shape " + shape;
    }
    String state = SqliteLink.ask(link, "PRAGMA quick_check(1)");
    if (!state.equals("ok")) {
      return state;
    }
    Map<String, String> is = schema(link);
    for (Map.Entry<String, String> due : schemaOf(shape).entrySet()) {
      if (!due.getValue().equals(is.get(due.getKey()))) {
        return due.getKey();
      }
    }
    String broken = SqliteLink.ask(link, "PRAGMA foreign_key_check");
    if (!broken.isEmpty()) {
      return broken;
    }
    return SqliteLink.ask(link, "SELECT count(*) FROM book_info").equals("1") ? "" : "book_info";
  }

  /** The newest shape's schema, needed at each opening and the same for all books. */
  private static final class Newest {
    private static final Map<String, String> SCHEMA = made();

    private static Map<String, String> made() {
      try {
        return Collections.unmodifiableMap(make(Migrations.newest()));
      } catch (SQLException e) {
        throw new IllegalStateException(e);
      }
    }
  }

  /** What a shape's scripts make, by name; a changed letter in it makes a book unreadable. */
  private static Map<String, String> schemaOf(int shape) throws SQLException {
    return shape == Migrations.newest() ? Newest.SCHEMA : make(shape);
  }

  private static Map<String, String> make(int shape) throws SQLException {
    try (Connection fresh = Migrations.inMemory(shape)) {
      return schema(fresh);
    }
  }

  private static Map<String, String> schema(Connection link) throws SQLException {
    Map<String, String> schema = new TreeMap<>();
    try (Statement statement = link.createStatement();
        ResultSet rows =
            statement.executeQuery("SELECT name, sql FROM sqlite_schema WHERE sql IS NOT NULL")) {
      while (rows.next()) {
        schema.put(rows.getString(1), rows.getString(2));
      }
    }
    return schema;
  }
}
