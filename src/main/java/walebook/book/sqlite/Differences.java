package walebook.book.sqlite;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import walebook.book.BookDifference;

/** What a copy holds that the book does not, and the other way round. */
public final class Differences {
  /** Tables that a person has a word for, in the order of a lesson; details hang on these. */
  private static final List<String> TABLES =
      List.of(
          "test_piece",
          "photo",
          "cloth",
          "cloth_reading",
          "student",
          "school_class",
          "lesson",
          "planned_piece",
          "machine",
          "garment_sheet",
          "note");

  private record Content(Map<String, Long> counts, Map<String, String> pieces) {
    private static final Content NONE = new Content(Map.of(), Map.of());
  }

  private Differences() {}

  /**
   * Compares.
   *
   * @throws SQLException when the copy can't be read
   */
  public static BookDifference between(Path book, Path copy) throws SQLException {
    Content then = content(copy);
    Content now;
    boolean readable = true;
    try {
      now = content(book);
    } catch (SQLException e) {
      // What is damaged now is exactly why somebody goes back: tell of the copy alone.
      now = Content.NONE;
      readable = false;
    }
    List<BookDifference.Count> counts = new ArrayList<>();
    for (String table : TABLES) {
      counts.add(
          new BookDifference.Count(
              table, now.counts().getOrDefault(table, 0L), then.counts().getOrDefault(table, 0L)));
    }
    List<String> lost = new ArrayList<>();
    List<String> changed = new ArrayList<>();
    for (Map.Entry<String, String> each : now.pieces().entrySet()) {
      String before = then.pieces().get(each.getKey());
      if (before == null) {
        lost.add(each.getKey());
      } else if (!Objects.equals(before, each.getValue())) {
        changed.add(each.getKey());
      }
    }
    Set<String> back = new TreeSet<>(then.pieces().keySet());
    back.removeAll(now.pieces().keySet());
    return new BookDifference(readable, counts, lost, List.copyOf(back), changed);
  }

  /** How many pieces a file holds. */
  public static long pieces(Path file) throws SQLException {
    try (Connection link = SqliteLink.watcher(file)) {
      return Long.parseLong(SqliteLink.ask(link, "SELECT count(*) FROM test_piece"));
    }
  }

  private static Content content(Path file) throws SQLException {
    Map<String, Long> counts = new TreeMap<>();
    Map<String, String> pieces = new TreeMap<>();
    try (Connection link = SqliteLink.watcher(file);
        Statement statement = link.createStatement()) {
      for (String table : TABLES) {
        boolean there =
            !SqliteLink.ask(link, "SELECT 1 FROM sqlite_schema WHERE name = '" + table + "'")
                .isEmpty();
        counts.put(
            table,
            there ? Long.parseLong(SqliteLink.ask(link, "SELECT count(*) FROM " + table)) : 0);
      }
      try (ResultSet rows =
          statement.executeQuery("SELECT code, id, row_version, changed_at FROM test_piece")) {
        while (rows.next()) {
          pieces.put(
              rows.getString(1), rows.getString(2) + " " + rows.getLong(3) + " " + rows.getLong(4));
        }
      }
    }
    return new Content(counts, pieces);
  }
}
