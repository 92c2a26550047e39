package walebook.book.sqlite;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import walebook.book.BookDifference;

/** What a copy holds that the book does not, and the other way round. */
public final class Differences {
  private static final String PIECES = "test_piece";

  /** What a person has a word for, in the order of a lesson. */
  public static final List<String> TABLES =
      List.of(
          "test_piece",
          "photo",
          "note",
          "piece_check",
          "feedback",
          "value_mark",
          "criterion",
          "criterion_tag",
          "bank_comment",
          "cloth",
          "cloth_reading",
          "cloth_wash",
          "student",
          "tutor",
          "term",
          "school_class",
          "class_student",
          "lesson",
          "planned_piece",
          "planned_reading",
          "pack",
          "shelved_pack",
          "kit_price",
          "machine",
          "garment_sheet",
          "book_info");

  /**
   * What is told by another row's version, what a book knows of its own past, and what is half
   * typed.
   */
  public static final Set<String> DETAILS =
      Set.of(
          "machine_stitch",
          "machine_dial",
          "pack_picture",
          "photo_image",
          "piece_pull",
          "fault_seen",
          "garment_girth",
          "garment_opening",
          "garment_edge",
          "private_girth",
          "draft",
          "draft_field",
          "change_log",
          "row_added",
          "step_mirror",
          "bin_item",
          "kept_blob",
          "gathered_book",
          "gathered_row",
          "gather_conflict");

  /** The version of each row by its key, and the codes of pieces by theirs. */
  private record Content(Map<String, Map<String, String>> rows, Map<String, String> codes) {
    private static final Content NONE = new Content(Map.of(), Map.of());

    Map<String, String> of(String table) {
      return rows.getOrDefault(table, Map.of());
    }
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
      long changed = table.equals(PIECES) ? 0 : changed(now.of(table), then.of(table)).size();
      counts.add(
          new BookDifference.Count(table, now.of(table).size(), then.of(table).size(), changed));
    }
    return new BookDifference(
        readable,
        counts,
        codes(now, without(now.of(PIECES), then.of(PIECES))),
        codes(then, without(then.of(PIECES), now.of(PIECES))),
        codes(now, changed(now.of(PIECES), then.of(PIECES))));
  }

  private static Set<String> without(Map<String, String> all, Map<String, String> others) {
    Set<String> left = new HashSet<>(all.keySet());
    left.removeAll(others.keySet());
    return left;
  }

  private static Set<String> changed(Map<String, String> now, Map<String, String> then) {
    Set<String> both = new HashSet<>(now.keySet());
    both.retainAll(then.keySet());
    both.removeIf(key -> Objects.equals(now.get(key), then.get(key)));
    return both;
  }

  private static List<String> codes(Content of, Set<String> keys) {
    return keys.stream().map(key -> of.codes().getOrDefault(key, "")).sorted().toList();
  }

  /** How many pieces a file holds. */
  public static long pieces(Path file) throws SQLException {
    try (Connection link = SqliteLink.watcher(file)) {
      return Long.parseLong(SqliteLink.ask(link, "SELECT count(*) FROM test_piece"));
    }
  }

  private static Content content(Path file) throws SQLException {
    Map<String, Map<String, String>> all = new HashMap<>();
    try (Connection link = SqliteLink.watcher(file)) {
      for (String table : TABLES) {
        boolean there =
            !SqliteLink.ask(link, "SELECT 1 FROM sqlite_schema WHERE name = '" + table + "'")
                .isEmpty();
        if (there) {
          all.put(table, pairs(link, "SELECT id, row_version || ' ' || changed_at FROM " + table));
        }
      }
      return new Content(all, pairs(link, "SELECT id, code FROM " + PIECES));
    }
  }

  private static Map<String, String> pairs(Connection link, String sql) throws SQLException {
    Map<String, String> pairs = new HashMap<>();
    try (Statement statement = link.createStatement();
        ResultSet rows = statement.executeQuery(sql)) {
      while (rows.next()) {
        pairs.put(rows.getString(1), rows.getString(2));
      }
    }
    return pairs;
  }
}
