package walebook.book;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import walebook.book.sqlite.Migrations;
import walebook.book.sqlite.SqliteLink;

/** A book of an older shape, with the rows of one made today. */
public final class OlderBook {
  private OlderBook() {}

  /**
   * Makes it by nothing but the first scripts.
   *
   * @param today a closed book
   * @return the older book's file
   */
  public static Path make(Path older, int shape, Path today) throws Exception {
    try (Connection link = SqliteLink.migrator(older)) {
      for (String script : Migrations.SCRIPTS.subList(0, shape)) {
        SqliteLink.run(link, Files.readString(Path.of("migrations", script)));
      }
      SqliteLink.run(link, "PRAGMA user_version = " + shape);
      SqliteLink.run(link, "ATTACH '" + today + "' AS today");
      for (String table : RawRows.tables(link)) {
        take(link, table);
      }
      SqliteLink.run(link, "DETACH today");
      SqliteLink.ask(link, "PRAGMA wal_checkpoint(TRUNCATE)");
    }
    return older;
  }

  /** Copies what the older table has columns for. */
  private static void take(Connection link, String table) throws Exception {
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
