package walebook.book.sqlite.gather;

import java.sql.SQLException;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Decides what becomes of each record of a book, kind by kind, into {@code temp.plan}: {@code new},
 * {@code take} (changed only there), {@code keep} (changed only here), {@code same}, {@code gone}
 * (removed here), {@code gone-changed} and {@code conflict}.
 *
 * <p>Who changed it is told by versions, each book's against that book's own at the common
 * ancestor. Without one, this book's history is asked whether the record was removed here; a record
 * at version 1 is as it was made and thus the ancestor; then each book's history is asked whether
 * it knows the other's version. What none of this tells is compared field by field and, if it
 * differs, left to a person.
 */
final class Fates {
  private final Link link;
  private final String schema;
  private final Set<String> aliased = new HashSet<>();

  Fates(Link link, String schema) {
    this.link = link;
    this.schema = schema;
  }

  void decide(Kind kind) throws SQLException {
    String table = kind.table();
    link.run(
        "INSERT INTO temp.plan SELECT '"
            + table
            + "', s.id, coalesce(b.our_id, "
            + natural(kind)
            + "s.id), "
            + fate(kind)
            + " FROM "
            + schema
            + "."
            + table
            + " s LEFT JOIN temp.base b ON b.entity = '"
            + table
            + "' AND b.row_id = s.id LEFT JOIN main."
            + table
            + " m ON m.id = coalesce(b.our_id, "
            + natural(kind)
            + "s.id)");
    compare(kind);
    if (!link.ask("SELECT 1 FROM temp.plan WHERE entity = ? AND our_id <> row_id LIMIT 1", table)
        .isEmpty()) {
      aliased.add(table);
    }
  }

  /** A record here that is the same under another key. */
  private String natural(Kind kind) throws SQLException {
    if (kind.natural().isEmpty()) {
      return "";
    }
    Map<String, String> references = link.references(kind.table());
    StringBuilder alike = new StringBuilder();
    for (String column : kind.natural()) {
      alike.append(alike.isEmpty() ? "" : " AND ").append("n.").append(column).append(" IS ");
      alike.append(translated(references.get(column), "s." + column));
    }
    return "(SELECT n.id FROM main."
        + kind.table()
        + " n WHERE "
        + alike
        + " AND NOT EXISTS (SELECT 1 FROM main."
        + kind.table()
        + " o WHERE o.id = s.id)), ";
  }

  /** A reference, seen from this book. */
  String translated(@org.jspecify.annotations.Nullable String to, String value) {
    return to == null || !aliased.contains(to)
        ? value
        : "coalesce((SELECT a.our_id FROM temp.plan a WHERE a.entity = '"
            + to
            + "' AND a.row_id = "
            + value
            + "), "
            + value
            + ")";
  }

  private String fate(Kind kind) throws SQLException {
    String there = "s.row_version = b.their_version AND s.changed_at = b.their_changed_at";
    String here = "m.row_version = b.our_version AND m.changed_at = b.our_changed_at";
    String alike = Kind.ALIKE.contains(kind.table()) ? " WHEN m.id <> s.id THEN 'same'" : "";
    String was = "'$." + kind.table() + "[0].";
    return "CASE WHEN m.id IS NULL AND b.row_id IS NULL THEN coalesce((SELECT CASE WHEN"
        + " json_extract(c.before_json, "
        + was
        + "row_version') = s.row_version AND json_extract(c.before_json, "
        + was
        + "changed_at') = s.changed_at THEN 'gone' ELSE 'gone-changed' END"
        + removedHere(kind)
        + "), 'new') WHEN m.id IS NULL AND "
        + there
        + " THEN 'gone' WHEN m.id IS NULL THEN 'gone-changed'"
        + alike
        + " WHEN b.row_id IS NOT NULL AND "
        + there
        + " AND "
        + here
        + " THEN 'same' WHEN s.row_version = m.row_version AND s.changed_at = m.changed_at AND "
        + equal(kind)
        + " THEN 'same' WHEN b.row_id IS NOT NULL AND "
        + there
        + " THEN 'keep' WHEN b.row_id IS NOT NULL AND s.row_version > b.their_version AND "
        + here
        + " THEN 'take' WHEN b.row_id IS NOT NULL AND s.row_version > b.their_version"
        + " THEN 'compare' WHEN m.id <> s.id OR m.created_at <> s.created_at THEN 'compare'"
        + " WHEN m.row_version = 1 AND s.row_version > 1 THEN 'take'"
        + " WHEN s.row_version = 1 AND m.row_version > 1 THEN 'keep'"
        + knows(kind, schema, "m")
        + " THEN 'take'"
        + knows(kind, "main", "s")
        + " THEN 'keep' ELSE 'compare' END";
  }

  /** The last removal that was done in this book; two records made one are no removal. */
  private static String removedHere(Kind kind) {
    return " FROM main.change_log c WHERE c.entity = '"
        + kind.table()
        + "' AND c.entity_id = s.id AND c.before_json IS NOT NULL AND c.after_json IS NULL"
        + " AND c.act <> 'gather.decide' AND NOT EXISTS (SELECT 1 FROM main.gathered_row g WHERE"
        + " g.entity = 'change_log' AND g.our_id = c.id AND g.is_born = 1)"
        + " ORDER BY c.done_at DESC, c.id DESC LIMIT 1";
  }

  /** That a book's history has the other's version as one that it changed. */
  private static String knows(Kind kind, String schema, String other) {
    String first = "'$." + kind.table() + "[0].";
    return " WHEN EXISTS (SELECT 1 FROM "
        + schema
        + ".change_log c WHERE c.entity = '"
        + kind.table()
        + "' AND c.entity_id = s.id AND json_extract(c.before_json, "
        + first
        + "row_version') = "
        + other
        + ".row_version AND json_extract(c.before_json, "
        + first
        + "changed_at') = "
        + other
        + ".changed_at)";
  }

  private String equal(Kind kind) throws SQLException {
    List<String> columns = link.columns(kind.table());
    return columns.stream()
        .filter(column -> !column.equals("id"))
        .map(column -> "s." + column + " IS m." + column)
        .collect(Collectors.joining(" AND ", "(", ")"));
  }

  private void compare(Kind kind) throws SQLException {
    if (link.ask(
            "SELECT 1 FROM temp.plan WHERE entity = ? AND fate = 'compare' LIMIT 1", kind.table())
        .isEmpty()) {
      return;
    }
    link.run(
        "UPDATE temp.plan SET fate = CASE WHEN (SELECT "
            + AsJson.content(link, kind, schema, "r")
            + " FROM "
            + schema
            + "."
            + kind.table()
            + " r WHERE r.id = plan.row_id) = (SELECT "
            + AsJson.content(link, kind, "main", "r")
            + " FROM main."
            + kind.table()
            + " r WHERE r.id = plan.our_id) THEN 'same' ELSE 'conflict' END"
            + " WHERE entity = ? AND fate = 'compare'",
        kind.table());
  }
}
