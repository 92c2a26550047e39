package walebook.book.sqlite;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import walebook.book.Ids;
import walebook.book.RescueNames;

/**
 * Makes rescued rows into a book again: a reference to a lost row is let go where it may be, a
 * stand-in is made where a piece would else be lost with its student or cloth, and what hangs on
 * nothing any more goes.
 */
final class Mending {
  private static final int ROUNDS = 20;

  private final Connection link;
  private final RescueNames names;
  private final long nowMs;
  private final LocalDate today;
  private int standIns;

  private record Broken(String table, long row, String parent, String column, boolean needed) {}

  Mending(Connection link, RescueNames names, Clock clock) {
    this.link = link;
    this.names = names;
    this.nowMs = clock.millis();
    this.today = LocalDate.now(clock);
  }

  /** Mends; returns how many rows were made anew. */
  int run() throws SQLException {
    dates();
    if (SqliteLink.ask(link, "SELECT id FROM book_info").isEmpty()) {
      insert("book_info", Ids.next().toString(), "name", names.book());
    }
    SqliteLink.run(link, "DELETE FROM book_info WHERE rowid <> (SELECT min(rowid) FROM book_info)");
    List<Broken> broken = broken();
    for (int round = 0; round < ROUNDS && !broken.isEmpty(); round++) {
      for (Broken each : broken) {
        mend(each);
      }
      broken = broken();
    }
    return standIns;
  }

  /** What looks like a date and is none would keep its whole row from being read. */
  private void dates() throws SQLException {
    for (String table : RescuedTable.names(link)) {
      for (String column : dateColumns(table, 1)) {
        SqliteLink.run(link, "DELETE FROM " + table + isNoDate(column));
      }
      for (String column : dateColumns(table, 0)) {
        SqliteLink.run(link, "UPDATE " + table + " SET " + column + " = NULL" + isNoDate(column));
      }
    }
  }

  private List<String> dateColumns(String table, int notNull) throws SQLException {
    return RescuedTable.column(
        link,
        "SELECT name FROM pragma_table_info('"
            + table
            + "') WHERE type = 'TEXT' AND name LIKE '%\\_on' ESCAPE '\\' AND \"notnull\" = "
            + notNull);
  }

  private static String isNoDate(String column) {
    return " WHERE " + column + " IS NOT NULL AND date(" + column + ") IS NOT " + column;
  }

  private List<Broken> broken() throws SQLException {
    withoutRowNumbers();
    List<Broken> broken = new ArrayList<>();
    try (Statement statement = link.createStatement();
        ResultSet rows =
            statement.executeQuery(
                "SELECT c.\"table\", c.rowid, c.parent, f.\"from\", i.\"notnull\""
                    + " FROM pragma_foreign_key_check c"
                    + " JOIN pragma_foreign_key_list(c.\"table\") f ON f.id = c.fkid"
                    + " JOIN pragma_table_info(c.\"table\") i ON i.name = f.\"from\"")) {
      while (rows.next()) {
        broken.add(
            new Broken(
                rows.getString(1),
                rows.getLong(2),
                rows.getString(3),
                rows.getString(4),
                rows.getBoolean(5)));
      }
    }
    return broken;
  }

  /** Rows of tables that number none can't be named by the check; they may let go all at once. */
  private void withoutRowNumbers() throws SQLException {
    try (Statement statement = link.createStatement();
        ResultSet rows =
            statement.executeQuery(
                "SELECT t.name, f.\"from\", f.\"table\", i.\"notnull\" FROM pragma_table_list t"
                    + " JOIN pragma_foreign_key_list(t.name) f"
                    + " JOIN pragma_table_info(t.name) i ON i.name = f.\"from\""
                    + " WHERE t.schema = 'main' AND t.wr = 1")) {
      while (rows.next()) {
        String column = rows.getString(2);
        String table = rows.getString(1);
        SqliteLink.run(
            link,
            (rows.getBoolean(4)
                    ? "DELETE FROM " + table
                    : "UPDATE " + table + " SET " + column + " = NULL")
                + " WHERE "
                + column
                + " NOT IN (SELECT id FROM "
                + rows.getString(3)
                + ")");
      }
    }
  }

  private void mend(Broken each) throws SQLException {
    String at = " WHERE rowid = " + each.row();
    if (!each.needed()) {
      try {
        SqliteLink.run(link, "UPDATE " + each.table() + " SET " + each.column() + " = NULL" + at);
        return;
      } catch (SQLException e) {
        // The row has to hang on something: it goes with what it hung on.
        SqliteLink.run(link, "DELETE FROM " + each.table() + at);
        return;
      }
    }
    String id = SqliteLink.ask(link, "SELECT " + each.column() + " FROM " + each.table() + at);
    if (id.isEmpty() || isThere(each.parent(), id)) {
      return;
    }
    if (!standIn(each.parent(), id)) {
      SqliteLink.run(link, "DELETE FROM " + each.table() + at);
    }
  }

  private boolean isThere(String table, String id) throws SQLException {
    try (PreparedStatement find =
        link.prepareStatement("SELECT 1 FROM " + table + " WHERE id = ?")) {
      find.setString(1, id);
      try (ResultSet found = find.executeQuery()) {
        return found.next();
      }
    }
  }

  private boolean standIn(String table, String id) throws SQLException {
    try {
      switch (table) {
        case "student" ->
            insert(table, id, "name", names.student(), "alias", "?" + id.substring(32));
        case "cloth" -> insert(table, id, "name", names.cloth());
        case "term" ->
            insert(
                table,
                id,
                "name",
                names.term(),
                "starts_on",
                today.toString(),
                "ends_on",
                today.toString());
        case "school_class" -> insert(table, id, "name", names.schoolClass(), "term_id", term());
        default -> {
          return false;
        }
      }
      standIns++;
      return true;
    } catch (SQLException e) {
      // Not even the key is one: then its row can't be kept either.
      return false;
    }
  }

  private String term() throws SQLException {
    String any = SqliteLink.ask(link, "SELECT id FROM term ORDER BY starts_on DESC LIMIT 1");
    if (!any.isEmpty()) {
      return any;
    }
    String id = Ids.next().toString();
    standIn("term", id);
    return id;
  }

  private void insert(String table, String id, String... pairs) throws SQLException {
    StringBuilder columns = new StringBuilder("id, created_at, changed_at");
    for (int i = 0; i < pairs.length; i += 2) {
      columns.append(", ").append(pairs[i]);
    }
    String sql =
        "INSERT INTO "
            + table
            + " ("
            + columns
            + ") VALUES (?, ?, ?"
            + ", ?".repeat(pairs.length / 2)
            + ")";
    try (PreparedStatement insert = link.prepareStatement(sql)) {
      insert.setString(1, id);
      insert.setLong(2, nowMs);
      insert.setLong(3, nowMs);
      for (int i = 1; i < pairs.length; i += 2) {
        insert.setString(4 + i / 2, pairs[i]);
      }
      insert.executeUpdate();
    }
  }
}
