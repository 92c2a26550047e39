package walebook.book;

import java.sql.Connection;
import java.sql.SQLException;
import walebook.book.sqlite.SqliteLink;

/** Fills a table of an older shape from the same table of a book made today. */
public final class OlderRows {
  private OlderRows() {}

  /** Copies what the older table has columns for; the book of today is attached as "today". */
  public static void take(Connection link, String table) throws SQLException {
    String columns =
        SqliteLink.ask(
            link, "SELECT group_concat(name) FROM pragma_table_info('" + table + "', 'main')");
    SqliteLink.run(
        link,
        "INSERT INTO main."
            + table
            + " ("
            + columns
            + ") SELECT "
            + columns
            + " FROM today."
            + table);
  }
}
