package walebook.book.sqlite.gather;

import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.book.gather.Conflict;

/** Reads what waits for a person, with the fields that differ beside each other. */
public final class ReadConflicts {
  /** A thing is called by what it is about rather than by where it belongs. */
  private static final Set<String> AROUND = Set.of("school_class", "lesson", "term", "tutor");

  private ReadConflicts() {}

  /** Those open, oldest first. */
  public static List<Conflict> open(Path book) throws SQLException {
    try (Link link = new Link(book)) {
      List<Conflict> all = new ArrayList<>();
      for (@Nullable String[] row :
          link.ask(
              "SELECT c.id, c.kind, c.entity, c.our_id, c.theirs_json, b.name, b.file_name,"
                  + " c.created_at FROM gather_conflict c JOIN gathered_book b ON b.id ="
                  + " c.source_id WHERE c.choice IS NULL ORDER BY c.created_at, c.id")) {
        List<String> text = new ArrayList<>();
        for (String each : row) {
          text.add(String.valueOf(each));
        }
        all.add(conflict(link, text));
      }
      return all;
    }
  }

  private static Conflict conflict(Link link, List<String> row) throws SQLException {
    Kind kind = Kind.of(row.get(2));
    String ours = AsJson.ours(link, kind, row.get(3));
    Map<String, List<List<Conflict.Value>>> mine =
        ours == null ? Map.of() : fields(link, kind, ours);
    Map<String, List<List<Conflict.Value>>> theirs = fields(link, kind, row.get(4));
    List<Conflict.Field> differ = new ArrayList<>();
    for (String name : names(link, kind, mine.keySet(), theirs.keySet())) {
      List<List<Conflict.Value>> here = mine.getOrDefault(name, List.of());
      List<List<Conflict.Value>> there = theirs.getOrDefault(name, List.of());
      if (!here.equals(there)) {
        differ.add(new Conflict.Field(name, here, there));
      }
    }
    String title = title(link, kind, theirs);
    if (title.isEmpty()) {
      title = title(link, kind, mine);
    }
    return new Conflict(
        UUID.fromString(row.get(0)),
        Conflict.Why.of(row.get(1)),
        kind.table(),
        title,
        row.get(5),
        row.get(6),
        differ,
        Instant.ofEpochMilli(Long.parseLong(row.get(7))));
  }

  /** Its own name, or what it is about: a check is called by its piece. */
  private static String title(Link link, Kind kind, Map<String, List<List<Conflict.Value>>> fields)
      throws SQLException {
    String own = text(fields, kind.label());
    if (!own.isEmpty()) {
      return own;
    }
    List<String> near = new ArrayList<>();
    List<String> far = new ArrayList<>();
    for (String column : link.columns(kind.table())) {
      String to = link.references(kind.table()).get(column);
      String called = to == null ? "" : text(fields, column);
      if (!called.isEmpty()) {
        (AROUND.contains(String.valueOf(to)) ? far : near).add(called);
      }
    }
    return String.join(", ", near.isEmpty() ? far : near);
  }

  private static String text(Map<String, List<List<Conflict.Value>>> fields, String column) {
    return Conflict.Field.raw(fields.getOrDefault(column, List.of()));
  }

  private static List<String> names(Link link, Kind kind, Set<String> mine, Set<String> theirs)
      throws SQLException {
    Set<String> either = new TreeSet<>(mine);
    either.addAll(theirs);
    List<String> names = new ArrayList<>(link.columns(kind.table()));
    names.retainAll(either);
    either.removeAll(names);
    names.addAll(either);
    return names;
  }

  private static Map<String, List<List<Conflict.Value>>> fields(Link link, Kind kind, String json)
      throws SQLException {
    Map<String, List<List<Conflict.Value>>> fields = new LinkedHashMap<>();
    for (Conflict.Value each :
        row(link, kind.table(), json, "$." + kind.table() + "[0]", Set.of())) {
      fields.put(each.column(), List.of(List.of(each)));
    }
    for (Kind.Part part : kind.parts()) {
      List<List<Conflict.Value>> rows = new ArrayList<>();
      long count =
          link.count("SELECT coalesce(json_array_length(?, ?), 0)", json, "$." + part.table());
      for (int i = 0; i < count; i++) {
        String path = "$." + part.table() + "[" + i + "]";
        List<Conflict.Value> one = new ArrayList<>(onPart(link, part, json, path));
        one.addAll(row(link, part.table(), json, path, Set.of(part.owner())));
        rows.add(one);
      }
      if (!rows.isEmpty()) {
        rows.sort(Comparator.comparing(each -> Conflict.Field.raw(List.of(each))));
        fields.put(part.table(), rows);
      }
    }
    return fields;
  }

  /** What tells the part that a part hangs on from its like. */
  private static List<Conflict.Value> onPart(Link link, Kind.Part part, String json, String path)
      throws SQLException {
    if (part.via() == null) {
      return List.of();
    }
    String key =
        link.one(
            "SELECT json_extract(v.value, ?) FROM json_each(?, ?) v WHERE json_extract(v.value,"
                + " '$.id') = json_extract(?, ?)",
            "$." + part.ownerKey(),
            json,
            "$." + part.via(),
            json,
            path + "." + part.owner());
    return key == null ? List.of() : List.of(new Conflict.Value(part.via(), part.ownerKey(), key));
  }

  private static List<Conflict.Value> row(
      Link link, String table, String json, String path, Set<String> without) throws SQLException {
    Map<String, String> references = link.references(table);
    List<Conflict.Value> values = new ArrayList<>();
    for (String column : link.columns(table)) {
      if (column.equals("id") || AsJson.STAMPS.contains(column) || without.contains(column)) {
        continue;
      }
      String value = link.one("SELECT json_extract(?, ?)", json, path + "." + column);
      if (value != null && !value.isEmpty()) {
        String to = references.get(column);
        String said = to == null ? value : called(link, to, value);
        values.add(new Conflict.Value(table, column, said));
      }
    }
    return values;
  }

  /**
   * A reference is shown by what people call the thing; empty where this book has no such thing.
   */
  private static String called(Link link, String to, String value) throws SQLException {
    String label =
        to.equals("cloth_reading")
            ? "(SELECT c.name FROM main.cloth c WHERE c.id = cloth_id) || ', ' || measured_on"
            : Kind.of(to).label();
    String name = link.one("SELECT " + label + " FROM main." + to + " WHERE id = ?", value);
    return name == null ? "" : name;
  }
}
