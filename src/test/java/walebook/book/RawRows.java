package walebook.book;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;

/** Asks a book's file by itself, past the program. */
public final class RawRows {
  private RawRows() {}

  /** The first value of each row. */
  public static List<String> column(Connection link, String sql) throws SQLException {
    List<String> values = new ArrayList<>();
    try (Statement statement = link.createStatement();
        ResultSet rows = statement.executeQuery(sql)) {
      while (rows.next()) {
        values.add(rows.getString(1));
      }
    }
    return values;
  }

  /** The tables that hold what people keep, by name. */
  public static List<String> tables(Connection link) throws SQLException {
    return column(
        link,
        "SELECT name FROM pragma_table_list WHERE schema = 'main' AND type = 'table'"
            + " AND name NOT LIKE 'sqlite_%' ORDER BY name");
  }
}
