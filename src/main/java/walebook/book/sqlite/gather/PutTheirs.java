package walebook.book.sqlite.gather;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Puts a record that waited as text into the book, in the place of ours or anew, with its parts.
 *
 * @param source the book that it came from, by whose names it refers to others
 * @param theirs the record as JSON
 */
record PutTheirs(Link link, NewIds ids, String source, String theirs) {

  /** Puts it; {@code there} says whether ours is there to be overwritten. */
  void put(Kind kind, String ourId, boolean there) throws SQLException {
    Map<String, String> references = link.references(kind.table());
    List<String> columns = new ArrayList<>();
    List<String> values = new ArrayList<>();
    for (String column : link.columns(kind.table())) {
      if (column.equals("id") || link.blobs(kind.table()).contains(column)) {
        continue;
      }
      String value = field("?1", kind.table() + "[0]." + column);
      columns.add(column);
      values.add(
          switch (column) {
            case "created_at" -> there ? "created_at" : value;
            case "changed_at" -> Long.toString(ids.now());
            case "row_version" -> there ? "max(" + value + ", row_version) + 1" : value + " + 1";
            default -> seenFromHere(references.get(column), value);
          });
    }
    String sql =
        there
            ? "UPDATE main.%s SET (%s) = (SELECT %s WHERE ?2 = ?2) WHERE id = ?3"
            : "INSERT INTO main.%s (id, %s) SELECT ?3, %s WHERE ?2 = ?2";
    String into = String.join(", ", columns);
    link.run(sql.formatted(kind.table(), into, String.join(", ", values)), theirs, source, ourId);
    for (Kind.Part part : kind.parts()) {
      parts(part, ourId);
    }
  }

  private void parts(Kind.Part part, String ourId) throws SQLException {
    if (!link.blobs(part.table()).isEmpty()) {
      return;
    }
    if (part.via() == null) {
      link.run("DELETE FROM main." + part.table() + " WHERE " + part.owner() + " = ?", ourId);
    }
    Map<String, String> references = link.references(part.table());
    List<String> values = new ArrayList<>();
    for (String column : link.columns(part.table())) {
      String value = field("e.value", column);
      values.add(
          column.equals(part.owner()) && part.via() == null
              ? "?3"
              : seenFromHere(references.get(column), value));
    }
    link.run(
        "INSERT INTO main."
            + part.table()
            + " SELECT "
            + String.join(", ", values)
            + " FROM json_each(?1, '$."
            + part.table()
            + "') e WHERE ?2 = ?2 AND ?3 = ?3",
        theirs,
        source,
        ourId);
  }

  private static String field(String json, String path) {
    return "json_extract(" + json + ", '$." + path + "')";
  }

  private static String seenFromHere(@Nullable String to, String value) {
    return to == null
        ? value
        : "coalesce((SELECT g.our_id FROM gathered_row g WHERE g.source_id = ?2 AND g.entity = '"
            + to
            + "' AND g.row_id = "
            + value
            + "), "
            + value
            + ")";
  }
}
