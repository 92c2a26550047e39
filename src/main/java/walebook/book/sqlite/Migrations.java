package walebook.book.sqlite;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.List;

/** Brings a file to the newest shape, script by script; each leaves its number in the header. */
public final class Migrations {
  /** The scripts in the order of their numbers; a test holds this against the folder. */
  public static final List<String> SCRIPTS =
      List.of(
          "V001__book.sql",
          "V002__garment_sheets.sql",
          "V003__packs.sql",
          "V004__marks_and_history.sql",
          "V005__assessment.sql",
          "V006__bin.sql",
          "V007__gather.sql",
          "V008__sewing_time.sql",
          "V009__planned_readings.sql",
          "V010__criterion_marks.sql",
          "V011__kit_prices.sql");

  private Migrations() {}

  /** The shape that this program knows. */
  public static int newest() {
    return SCRIPTS.size();
  }

  public static int shapeOf(Connection link) throws SQLException {
    return Integer.parseInt(SqliteLink.ask(link, "PRAGMA user_version"));
  }

  /**
   * Applies what is missing, each script whole or not at all.
   *
   * @throws SQLException when a script fails or leaves a broken reference behind
   */
  public static void apply(Path file) throws SQLException {
    try (Connection link = SqliteLink.migrator(file)) {
      applyTo(link, newest());
    }
  }

  /** Applies what is missing up to a shape; what a rescue needs to read an older book. */
  static void applyTo(Connection link, int shape) throws SQLException {
    for (int next = shapeOf(link) + 1; next <= shape; next++) {
      step(link, next);
    }
    String broken = SqliteLink.ask(link, "PRAGMA foreign_key_check");
    if (!broken.isEmpty()) {
      throw new SQLException("a migration broke references in " + broken);
    }
  }

  /** A book of a shape without a row, in memory. */
  static Connection inMemory(int shape) throws SQLException {
    Connection link = DriverManager.getConnection("jdbc:sqlite::memory:");
    for (int next = 1; next <= shape; next++) {
      step(link, next);
    }
    return link;
  }

  private static void step(Connection link, int number) throws SQLException {
    SqliteLink.run(link, "BEGIN IMMEDIATE");
    try {
      SqliteLink.run(link, script(SCRIPTS.get(number - 1)));
      SqliteLink.run(link, "PRAGMA user_version = " + number);
      SqliteLink.run(link, "COMMIT");
    } catch (SQLException e) {
      SqliteLink.rollBack(link, e);
      throw e;
    }
  }

  private static String script(String name) {
    try (InputStream in = Migrations.class.getResourceAsStream("/walebook/migrations/" + name)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks its script " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
