package walebook.book.sqlite.gather;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.record.PieceCode;

/** Carries out what was decided: rows copied from the attached book in whole statements. */
record Moves(Link link, String schema, Fates fates, Random chance) {

  void carryOut(Kind kind, boolean mayLack) throws SQLException {
    giveFreeValues(kind);
    insert(kind, mayLack);
    take(kind);
    for (Kind.Part part : kind.parts()) {
      parts(kind, part);
    }
  }

  /** Two records with one code or number: theirs is given a free one until a person decides. */
  private void giveFreeValues(Kind kind) throws SQLException {
    link.run("DELETE FROM temp.free");
    for (String column : kind.unique()) {
      for (@Nullable String[] twin :
          link.ask(
              "SELECT p.row_id, m.id FROM temp.plan p JOIN "
                  + schema
                  + "."
                  + kind.table()
                  + " s ON s.id = p.row_id JOIN main."
                  + kind.table()
                  + " m ON m."
                  + column
                  + " = s."
                  + column
                  + " AND m.id <> p.our_id WHERE p.entity = ? AND p.fate = 'new'",
              kind.table())) {
        link.run(
            "INSERT INTO temp.free VALUES (?, ?, ?)", twin[0], column, free(kind.table(), column));
        link.run(
            "INSERT OR IGNORE INTO temp.twin VALUES (?, ?, ?)", kind.table(), twin[0], twin[1]);
      }
    }
  }

  private @Nullable Object free(String table, String column) throws SQLException {
    if (column.equals("code")) {
      String code = PieceCode.draw(chance);
      while (isTaken(code)) {
        code = PieceCode.draw(chance);
      }
      return code;
    }
    if (column.equals("number")) {
      return link.count(
          "SELECT min(n + 1) FROM (SELECT 0 AS n UNION SELECT number FROM main.machine UNION SELECT"
              + " number FROM "
              + schema
              + ".machine UNION SELECT value FROM temp.free WHERE field = 'number')"
              + " WHERE n + 1 NOT IN (SELECT number FROM main."
              + table
              + " UNION SELECT number FROM "
              + schema
              + "."
              + table
              + " UNION SELECT value FROM temp.free WHERE field = 'number')");
    }
    return null;
  }

  private boolean isTaken(String code) throws SQLException {
    for (String each : List.of("main", schema)) {
      for (String table : List.of("test_piece", "planned_piece")) {
        if (!link.ask("SELECT 1 FROM " + each + "." + table + " WHERE code = ?", code).isEmpty()) {
          return true;
        }
      }
    }
    return false;
  }

  private void insert(Kind kind, boolean mayLack) throws SQLException {
    Map<String, String> references = link.references(kind.table());
    boolean twins = !link.ask("SELECT 1 FROM temp.free LIMIT 1").isEmpty();
    List<String> values = new ArrayList<>();
    StringBuilder there = new StringBuilder();
    for (String column : link.columns(kind.table())) {
      String to = references.get(column);
      String value = fates.translated(to, "s." + column);
      if (mayLack && to != null && !to.equals(kind.table())) {
        there.append(
            " AND (s."
                + column
                + " IS NULL OR EXISTS (SELECT 1 FROM main."
                + to
                + " x WHERE x.id = "
                + value
                + "))");
      }
      values.add(twins && kind.unique().contains(column) ? free(column) : value);
    }
    link.run(
        "INSERT INTO main."
            + kind.table()
            + " SELECT "
            + String.join(", ", values)
            + " FROM temp.plan p JOIN "
            + schema
            + "."
            + kind.table()
            + " s ON s.id = p.row_id WHERE p.entity = ? AND p.fate = 'new'"
            + history(kind)
            + there,
        kind.table());
    if (mayLack || kind.isHistory()) {
      link.run(
          "UPDATE temp.plan SET fate = 'gone' WHERE entity = ? AND fate = 'new' AND NOT EXISTS"
              + " (SELECT 1 FROM main."
              + kind.table()
              + " m WHERE m.id = plan.row_id)",
          kind.table());
    }
    if (mayLack && references.containsValue(kind.table())) {
      link.run(
          "UPDATE main.test_piece SET parent_id = NULL WHERE id IN (SELECT row_id FROM temp.plan"
              + " WHERE entity = 'test_piece' AND fate = 'new') AND parent_id NOT IN"
              + " (SELECT id FROM main.test_piece)");
    }
  }

  /** The history of a record that is not as there would undo what is here. */
  private static String history(Kind kind) {
    String told = kind.table().equals(Kind.ADDED) ? "s.id" : "s.entity_id";
    return kind.isHistory()
        ? " AND NOT EXISTS (SELECT 1 FROM temp.plan h WHERE h.entity = s.entity"
            + " AND h.row_id = "
            + told
            + " AND h.fate NOT IN ('new', 'take', 'same'))"
            + " AND s.entity IN ("
            + Kind.ALL.stream()
                .map(each -> AsJson.quoted(each.table()))
                .collect(Collectors.joining(", "))
            + ")"
        : "";
  }

  private static String free(String column) {
    return "CASE WHEN EXISTS (SELECT 1 FROM temp.free f WHERE f.row_id = s.id AND f.field = '"
        + column
        + "') THEN (SELECT f.value FROM temp.free f WHERE f.row_id = s.id AND f.field = '"
        + column
        + "') ELSE s."
        + column
        + " END";
  }

  private void take(Kind kind) throws SQLException {
    if (link.ask("SELECT 1 FROM temp.plan WHERE entity = ? AND fate = 'take' LIMIT 1", kind.table())
        .isEmpty()) {
      return;
    }
    Map<String, String> references = link.references(kind.table());
    List<String> columns = new ArrayList<>();
    List<String> values = new ArrayList<>();
    for (String column : link.columns(kind.table())) {
      if (column.equals("id") || column.equals("created_at")) {
        continue;
      }
      columns.add(column);
      String value = fates.translated(references.get(column), "s." + column);
      if (column.equals("row_version")) {
        // A form that is open on the older version has to notice.
        value = "max(s.row_version, m.row_version + 1)";
      } else if (kind.unique().contains(column)) {
        value =
            "CASE WHEN EXISTS (SELECT 1 FROM main."
                + kind.table()
                + " x WHERE x."
                + column
                + " = s."
                + column
                + " AND x.id <> m.id) THEN m."
                + column
                + " ELSE s."
                + column
                + " END";
      }
      values.add(value);
    }
    link.run(
        "UPDATE main."
            + kind.table()
            + " AS m SET ("
            + String.join(", ", columns)
            + ") = (SELECT "
            + String.join(", ", values)
            + " FROM "
            + schema
            + "."
            + kind.table()
            + " s JOIN temp.plan p ON p.row_id = s.id WHERE p.entity = ? AND p.our_id = m.id)"
            + " WHERE m.id IN (SELECT our_id FROM temp.plan WHERE entity = ? AND fate = 'take')",
        kind.table(),
        kind.table());
    for (Kind.Part part : kind.parts()) {
      if (part.via() == null && link.blobs(part.table()).isEmpty()) {
        link.run(
            "DELETE FROM main."
                + part.table()
                + " WHERE "
                + part.owner()
                + " IN (SELECT our_id FROM temp.plan WHERE entity = ? AND fate = 'take')",
            kind.table());
      }
    }
  }

  /** Parts with pictures are made once and never changed, so only new ones come. */
  private void parts(Kind kind, Kind.Part part) throws SQLException {
    Map<String, String> references = link.references(part.table());
    String fate = link.blobs(part.table()).isEmpty() ? "IN ('new', 'take')" : "= 'new'";
    List<String> values = new ArrayList<>();
    for (String column : link.columns(part.table())) {
      values.add(
          column.equals(part.owner()) && part.via() == null
              ? "p.our_id"
              : fates.translated(references.get(column), "q." + column));
    }
    String from =
        part.via() == null
            ? schema + "." + part.table() + " q ON q." + part.owner() + " = p.row_id"
            : schema
                + "."
                + part.via()
                + " v ON v."
                + part.viaOwner()
                + " = p.row_id JOIN "
                + schema
                + "."
                + part.table()
                + " q ON q."
                + part.owner()
                + " = v.id";
    link.run(
        "INSERT INTO main."
            + part.table()
            + " SELECT "
            + String.join(", ", values)
            + " FROM temp.plan p JOIN "
            + from
            + " WHERE p.entity = ? AND p.fate "
            + fate,
        kind.table());
  }
}
