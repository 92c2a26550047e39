package walebook.book.sqlite.gather;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Expressions that write a record with its parts as JSON, in the shape the history keeps. */
final class AsJson {
  static final Set<String> STAMPS = Set.of("created_at", "changed_at", "row_version");

  /** SQLite takes 127 arguments to a function; a column is two of them. */
  private static final int AT_ONCE = 50;

  private AsJson() {}

  /** A record of this book by its key, pictures left out; null when it is not there. */
  static @Nullable String ours(Link link, Kind kind, String id) throws SQLException {
    return link.one(
        "SELECT "
            + whole(link, kind, "main", "r")
            + " FROM main."
            + kind.table()
            + " r WHERE r.id = ?",
        id);
  }

  /** A record's row and parts, pictures left out. */
  static String whole(Link link, Kind kind, String schema, String alias) throws SQLException {
    List<String> all = new ArrayList<>();
    all.add(quoted(kind.table()));
    all.add("json_array(" + row(link.columns(kind.table()), link, kind.table(), alias) + ")");
    for (Kind.Part part : kind.parts()) {
      if (link.blobs(part.table()).isEmpty()) {
        all.add(quoted(part.table()));
        // What comes out of a query of its own is text to the function around it.
        all.add(
            "json((SELECT json_group_array("
                + row(link.columns(part.table()), link, part.table(), "q")
                + ") FROM "
                + schema
                + "."
                + part.table()
                + " q WHERE "
                + part.ofRecord(schema, "q", alias + ".id")
                + "))");
      }
    }
    return "json_object(" + String.join(", ", all) + ")";
  }

  /** What a person sees of it: no keys and stamps of its own, parts in an order of their own. */
  static String content(Link link, Kind kind, String schema, String alias) throws SQLException {
    List<String> own = new ArrayList<>(link.columns(kind.table()));
    own.removeAll(STAMPS);
    own.remove("id");
    List<String> all = new ArrayList<>();
    all.add(row(own, link, kind.table(), alias));
    for (Kind.Part part : kind.parts()) {
      if (link.blobs(part.table()).isEmpty()) {
        List<String> columns = new ArrayList<>(link.columns(part.table()));
        columns.removeAll(STAMPS);
        columns.removeAll(List.of("id", part.owner()));
        String one = row(columns, link, part.table(), "q");
        if (part.via() != null) {
          one =
              "json_array("
                  + one
                  + ", (SELECT v."
                  + part.ownerKey()
                  + " FROM "
                  + schema
                  + "."
                  + part.via()
                  + " v WHERE v.id = q."
                  + part.owner()
                  + "))";
        }
        all.add(
            "(SELECT json_group_array(one) FROM (SELECT "
                + one
                + " AS one FROM "
                + schema
                + "."
                + part.table()
                + " q WHERE "
                + part.ofRecord(schema, "q", alias + ".id")
                + " ORDER BY one))");
      }
    }
    return "json_array(" + String.join(", ", all) + ")";
  }

  private static String row(List<String> columns, Link link, String table, String alias)
      throws SQLException {
    List<String> plain = new ArrayList<>(columns);
    plain.removeAll(link.blobs(table));
    String json = "";
    for (int i = 0; i < plain.size(); i += AT_ONCE) {
      String some =
          plain.subList(i, Math.min(plain.size(), i + AT_ONCE)).stream()
              .map(column -> quoted(column) + ", " + alias + "." + column)
              .collect(Collectors.joining(", ", "json_object(", ")"));
      json = json.isEmpty() ? some : "json_patch(" + json + ", " + some + ")";
    }
    return json;
  }

  static String quoted(String word) {
    return "'" + word + "'";
  }
}
