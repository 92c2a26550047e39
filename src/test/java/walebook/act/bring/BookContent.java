package walebook.act.bring;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;

/** A hash over every row of every table of a book, read past the program. */
final class BookContent implements AutoCloseable {
  private final Connection link;
  private final List<String> tables = new ArrayList<>();

  BookContent(Path file) throws SQLException {
    link = DriverManager.getConnection("jdbc:sqlite:" + file);
    try (Statement ask = link.createStatement();
        ResultSet names =
            ask.executeQuery("select name from sqlite_schema where type = 'table' order by name")) {
      while (names.next()) {
        tables.add(names.getString(1));
      }
    }
  }

  /** The hash of all tables but those left out. */
  String hash(Set<String> without) throws SQLException {
    try (Statement ask = link.createStatement()) {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      for (String each : tables) {
        if (without.contains(each)) {
          continue;
        }
        digest.update(each.getBytes(StandardCharsets.UTF_8));
        try (ResultSet rows = ask.executeQuery("select * from " + each + " order by 1")) {
          int columns = rows.getMetaData().getColumnCount();
          while (rows.next()) {
            for (int i = 1; i <= columns; i++) {
              digest.update((rows.getString(i) + "\n").getBytes(StandardCharsets.UTF_8));
            }
          }
        }
      }
      return HexFormat.of().formatHex(digest.digest());
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  @Override
  public void close() throws SQLException {
    link.close();
  }
}
