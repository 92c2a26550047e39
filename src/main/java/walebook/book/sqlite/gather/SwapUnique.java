package walebook.book.sqlite.gather;

import java.sql.SQLException;
import org.jspecify.annotations.Nullable;

/** Swaps what no two records may share: a code, a number, a planned piece. */
record SwapUnique(Link link, NewIds ids) {

  /**
   * Theirs gets what it came with; ours gets what theirs was given meanwhile.
   *
   * @param rowId theirs, as it stands in this book
   * @param theirs the record that it came as, as JSON
   */
  void swap(Kind kind, String ourId, String rowId, String theirs) throws SQLException {
    for (String column : kind.unique()) {
      String wanted =
          link.one("SELECT json_extract(?, '$." + kind.table() + "[0]." + column + "')", theirs);
      String mine = value(kind, column, ourId);
      String meanwhile = value(kind, column, rowId);
      if (wanted != null && wanted.equals(mine)) {
        // No two may share it, not even for a moment: ours steps aside first.
        String aside = column.equals("planned_id") ? null : aside(kind, column);
        set(kind, column, ourId, aside);
        set(kind, column, rowId, wanted);
        set(kind, column, ourId, meanwhile);
      }
    }
    stamp(kind, ourId);
    stamp(kind, rowId);
  }

  private String aside(Kind kind, String column) throws SQLException {
    return column.equals("number")
        ? link.must(
            "SELECT max(n) FROM (WITH RECURSIVE all_n(n) AS (SELECT 1 UNION ALL SELECT n + 1 FROM"
                + " all_n WHERE n < 999) SELECT n FROM all_n WHERE n NOT IN (SELECT number FROM "
                + kind.table()
                + "))")
        : "------";
  }

  private @Nullable String value(Kind kind, String column, String id) throws SQLException {
    return link.one("SELECT " + column + " FROM main." + kind.table() + " WHERE id = ?", id);
  }

  private void set(Kind kind, String column, String id, @Nullable String value)
      throws SQLException {
    link.run("UPDATE main." + kind.table() + " SET " + column + " = ? WHERE id = ?", value, id);
  }

  private void stamp(Kind kind, String id) throws SQLException {
    link.run(
        "UPDATE main."
            + kind.table()
            + " SET row_version = row_version + 1, changed_at = ?"
            + " WHERE id = ?",
        ids.now(),
        id);
  }
}
