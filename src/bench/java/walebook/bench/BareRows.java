package walebook.bench;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/** The bare rows of a class's pieces, to be written over and over. */
final class BareRows {
  private BareRows() {}

  /** Values by column, without what only one piece has. */
  static List<Object[]> rows(Connection link, UUID classId) throws SQLException {
    List<Object[]> rows = new ArrayList<>();
    try (PreparedStatement ask =
        link.prepareStatement("SELECT * FROM test_piece WHERE class_id = ? ORDER BY sewn_on")) {
      ask.setString(1, classId.toString());
      try (ResultSet found = ask.executeQuery()) {
        int columns = found.getMetaData().getColumnCount();
        while (found.next()) {
          Object[] row = new Object[columns];
          for (int i = 0; i < columns; i++) {
            String name = found.getMetaData().getColumnName(i + 1);
            boolean own = name.equals("planned_id") || name.equals("parent_id");
            row[i] = own ? null : found.getObject(i + 1);
          }
          rows.add(row);
        }
      }
    }
    return rows;
  }
}
