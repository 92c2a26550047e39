package walebook.book.sqlite.gather;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import walebook.book.sqlite.SqliteLink;

/** A connection to this book with others attached, and what its tables look like. */
final class Link implements AutoCloseable {
  private final Connection connection;
  private final Map<String, List<String>> columns = new HashMap<>();
  private final Map<String, List<String>> blobs = new HashMap<>();
  private final Map<String, Map<String, String>> references = new HashMap<>();

  Link(Path book) throws SQLException {
    connection = SqliteLink.gatherer(book);
  }

  Connection connection() {
    return connection;
  }

  /** Attaches a file that nobody writes, without so much as a lock beside it. */
  void attachStill(Path file, String schema) throws SQLException {
    run("ATTACH ? AS " + schema, SqliteLink.still(file));
  }

  /** Attaches a book that may be open. */
  void attach(Path file, String schema) throws SQLException {
    run("ATTACH ? AS " + schema, file.toAbsolutePath().toString());
  }

  int run(String sql, @Nullable Object... values) throws SQLException {
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      fill(statement, values);
      return statement.executeUpdate();
    }
  }

  /** Rows as text; null where there is nothing. */
  List<@Nullable String[]> ask(String sql, @Nullable Object... values) throws SQLException {
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      fill(statement, values);
      List<@Nullable String[]> rows = new ArrayList<>();
      try (ResultSet found = statement.executeQuery()) {
        int width = found.getMetaData().getColumnCount();
        while (found.next()) {
          @Nullable String[] row = new String[width];
          for (int i = 0; i < width; i++) {
            row[i] = found.getString(i + 1);
          }
          rows.add(row);
        }
      }
      return rows;
    }
  }

  /** The first value of the first row; null when there is no row or nothing in it. */
  @Nullable String one(String sql, @Nullable Object... values) throws SQLException {
    List<@Nullable String[]> rows = ask(sql, values);
    return rows.isEmpty() ? null : rows.get(0)[0];
  }

  /** The first value of the first row, which is known to be there. */
  String must(String sql, @Nullable Object... values) throws SQLException {
    String found = one(sql, values);
    if (found == null) {
      throw new SQLException("nothing found: " + sql);
    }
    return found;
  }

  long count(String sql, @Nullable Object... values) throws SQLException {
    return Long.parseLong(must(sql, values));
  }

  private static void fill(PreparedStatement statement, @Nullable Object... values)
      throws SQLException {
    for (int i = 0; i < values.length; i++) {
      statement.setObject(i + 1, values[i]);
    }
  }

  List<String> columns(String table) throws SQLException {
    List<String> known = columns.get(table);
    if (known == null) {
      known = firsts(ask("SELECT name FROM pragma_table_info(?) ORDER BY cid", table));
      columns.put(table, known);
    }
    return known;
  }

  List<String> blobs(String table) throws SQLException {
    List<String> known = blobs.get(table);
    if (known == null) {
      known = firsts(ask("SELECT name FROM pragma_table_info(?) WHERE type = 'BLOB'", table));
      blobs.put(table, known);
    }
    return known;
  }

  /** Columns that refer to other tables, with the table. */
  Map<String, String> references(String table) throws SQLException {
    Map<String, String> known = references.get(table);
    if (known == null) {
      known = new HashMap<>();
      for (@Nullable String[] each :
          ask("SELECT \"from\", \"table\" FROM pragma_foreign_key_list(?)", table)) {
        known.put(String.valueOf(each[0]), String.valueOf(each[1]));
      }
      references.put(table, known);
    }
    return known;
  }

  private static List<String> firsts(List<@Nullable String[]> rows) {
    List<String> firsts = new ArrayList<>();
    for (@Nullable String[] each : rows) {
      firsts.add(String.valueOf(each[0]));
    }
    return firsts;
  }

  @Override
  public void close() throws SQLException {
    connection.close();
  }
}
