package walebook.book.sqlite;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import walebook.book.pages.Row;

/** One table of the new book while rows are taken into it. */
final class RescuedTable implements AutoCloseable {
  private static final int ID_LENGTH = 36;
  private static final Pattern KEY =
      Pattern.compile("[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}");

  private final Connection link;
  private final String name;
  private final List<String> columns;
  private final Map<Integer, PreparedStatement> inserts = new HashMap<>();
  private boolean empty = true;

  private RescuedTable(Connection link, String name, List<String> columns) {
    this.link = link;
    this.name = name;
    this.columns = List.copyOf(columns);
  }

  static Map<String, RescuedTable> all(Connection link) throws SQLException {
    Map<String, RescuedTable> all = new LinkedHashMap<>();
    for (String name : names(link)) {
      all.put(
          name,
          new RescuedTable(
              link,
              name,
              column(link, "SELECT name FROM pragma_table_info('" + name + "') ORDER BY cid")));
    }
    return all;
  }

  static List<String> names(Connection link) throws SQLException {
    return column(
        link,
        "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%'"
            + " ORDER BY rowid");
  }

  static List<String> column(Connection link, String sql) throws SQLException {
    List<String> values = new ArrayList<>();
    try (Statement statement = link.createStatement();
        ResultSet rows = statement.executeQuery(sql)) {
      while (rows.next()) {
        values.add(rows.getString(1));
      }
    }
    return values;
  }

  String name() {
    return name;
  }

  boolean isEmpty() {
    return empty;
  }

  /** Whether a row without a home could be this table's: as many values, a key in front. */
  boolean fits(Row row) {
    return row.values().size() == columns.size() && row.text(0).length() == ID_LENGTH;
  }

  /** A key with an overwritten letter leads nowhere, and no record could be made of its row. */
  private boolean keysAreKeys(Row row) {
    for (int i = 0; i < row.values().size(); i++) {
      String column = columns.get(i);
      boolean key = column.equals("id") || column.endsWith("_id");
      if (key && row.values().get(i) instanceof String text && !KEY.matcher(text).matches()) {
        return false;
      }
    }
    return true;
  }

  /**
   * Takes a row.
   *
   * @return 1 when the new book refuses it, else 0
   */
  long take(Row row) {
    int width = row.values().size();
    if (width < 1 || width > columns.size() || !keysAreKeys(row)) {
      return 1;
    }
    try {
      PreparedStatement insert = insert(width);
      for (int i = 0; i < width; i++) {
        insert.setObject(i + 1, row.values().get(i));
      }
      insert.executeUpdate();
      empty = false;
      return 0;
    } catch (SQLException e) {
      // A value that the table forbids: overwritten bytes, counted as lost.
      return 1;
    }
  }

  /** A row from before a column was added is shorter; the column's default stands for the rest. */
  private PreparedStatement insert(int width) throws SQLException {
    PreparedStatement known = inserts.get(width);
    if (known != null) {
      return known;
    }
    String sql =
        "INSERT INTO "
            + name
            + " ("
            + String.join(", ", columns.subList(0, width))
            + ") VALUES (?"
            + ", ?".repeat(width - 1)
            + ")";
    PreparedStatement made = link.prepareStatement(sql);
    inserts.put(width, made);
    return made;
  }

  @Override
  public void close() throws SQLException {
    for (PreparedStatement each : inserts.values()) {
      each.close();
    }
  }

  long out() throws SQLException {
    return Long.parseLong(SqliteLink.ask(link, "SELECT count(*) FROM " + name));
  }

  /** Keys of those named that did not come out. */
  Set<String> gone(Set<String> named) throws SQLException {
    return without(named, "SELECT " + columns.get(0) + " FROM " + name);
  }

  /** Codes of those named that did not come out. */
  Set<String> goneCodes(Set<String> named) throws SQLException {
    return without(named, "SELECT code FROM " + name);
  }

  private Set<String> without(Set<String> named, String sql) throws SQLException {
    Set<String> gone = new TreeSet<>(named);
    gone.removeAll(new TreeSet<>(column(link, sql)));
    return gone;
  }
}
