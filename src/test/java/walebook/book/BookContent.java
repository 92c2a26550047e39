package walebook.book;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import walebook.book.sqlite.SqliteLink;

/** Everything an open book holds, written out table by table, whatever its stamps. */
final class BookContent {
  private static final Set<String> OF_HISTORY =
      Set.of("change_log", "row_added", "step_mirror", "kept_blob");

  private BookContent() {}

  static Map<String, List<String>> of(Book book) throws SQLException {
    Map<String, List<String>> all = new TreeMap<>();
    try (Connection link = SqliteLink.reader(book.file())) {
      for (String table :
          RawRows.column(
              link,
              "SELECT name FROM pragma_table_list WHERE schema = 'main' AND type = 'table'"
                  + " AND name NOT LIKE 'sqlite_%'")) {
        if (!OF_HISTORY.contains(table)) {
          String unlike =
              table.equals("bin_item")
                  ? "'id', 'step_id', 'rows_json', 'created_at', 'changed_at', 'row_version'"
                  : "'created_at', 'changed_at', 'row_version'";
          String columns =
              String.join(
                  " || '|' || ",
                  RawRows.column(
                      link,
                      "SELECT 'quote(\"' || name || '\")' FROM pragma_table_info('"
                          + table
                          + "') WHERE name NOT IN ("
                          + unlike
                          + ")"));
          all.put(
              table, RawRows.column(link, "SELECT " + columns + " FROM " + table + " ORDER BY 1"));
        }
      }
    }
    return all;
  }
}
