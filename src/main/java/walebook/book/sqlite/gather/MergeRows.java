package walebook.book.sqlite.gather;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Makes one record of two: all that referred to theirs refers to ours from then on. */
record MergeRows(Link link, NewIds ids, Gone gone) {

  /** Told of each record that is no more, with what it was. */
  interface Gone {
    void was(Kind kind, String id, String before) throws SQLException;
  }

  void merge(Kind kind, String ours, String theirs) throws SQLException {
    String before = AsJson.ours(link, kind, theirs);
    for (@Nullable String[] each :
        link.ask(
            "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%'")) {
      String child = String.valueOf(each[0]);
      for (Map.Entry<String, String> reference : link.references(child).entrySet()) {
        if (reference.getValue().equals(kind.table())) {
          refer(child, reference.getKey(), ours, theirs);
        }
      }
    }
    link.run("DELETE FROM main." + kind.table() + " WHERE id = ?", theirs);
    link.run(
        "UPDATE gathered_row SET our_id = ?, our_version = 0, our_changed_at = 0, changed_at = ?,"
            + " row_version = row_version + 1 WHERE entity = ? AND our_id = ?",
        ours,
        ids.now(),
        kind.table(),
        theirs);
    if (before != null) {
      gone.was(kind, theirs, before);
    }
  }

  /** What would be there twice then, as a criterion of one code, becomes one as well. */
  private void refer(String child, String column, String ours, String theirs) throws SQLException {
    String where = " WHERE " + column + " = ?";
    link.run("UPDATE OR IGNORE main." + child + " SET " + column + " = ?" + where, ours, theirs);
    Kind kind =
        Kind.ALL.stream().filter(each -> each.table().equals(child)).findFirst().orElse(null);
    if (kind != null) {
      for (@Nullable String[] each : link.ask("SELECT id FROM main." + child + where, theirs)) {
        String twice = String.valueOf(each[0]);
        String same = same(kind, column, ours, twice);
        if (same != null) {
          merge(kind, same, twice);
        }
      }
    }
    link.run("DELETE FROM main." + child + where, theirs);
  }

  /** Ours of the same natural key, once theirs refers to what is ours. */
  private @Nullable String same(Kind kind, String column, String ours, String twice)
      throws SQLException {
    if (!kind.natural().contains(column)) {
      return null;
    }
    List<String> alike = new ArrayList<>();
    for (String each : kind.natural()) {
      alike.add(each.equals(column) ? "n." + each + " = ?" : "n." + each + " IS t." + each);
    }
    return link.one(
        "SELECT n.id FROM main."
            + kind.table()
            + " n JOIN main."
            + kind.table()
            + " t ON t.id = ? WHERE "
            + String.join(" AND ", alike),
        twice,
        ours);
  }
}
