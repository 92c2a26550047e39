package walebook.book.sqlite.gather;

import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.book.gather.Conflict;

/** Reads what waits for a person, with the fields that differ beside each other. */
public final class ReadConflicts {
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
    Map<String, String> mine = ours == null ? Map.of() : fields(link, kind, ours);
    Map<String, String> theirs = fields(link, kind, row.get(4));
    List<Conflict.Field> differ = new ArrayList<>();
    for (String name : names(link, kind, mine, theirs)) {
      String here = mine.getOrDefault(name, "");
      String there = theirs.getOrDefault(name, "");
      if (!here.equals(there)) {
        differ.add(new Conflict.Field(name, here, there));
      }
    }
    String title =
        kind.label().isEmpty()
            ? ""
            : theirs.getOrDefault(kind.label(), mine.getOrDefault(kind.label(), ""));
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

  private static List<String> names(
      Link link, Kind kind, Map<String, String> mine, Map<String, String> theirs)
      throws SQLException {
    Set<String> either = new TreeSet<>(mine.keySet());
    either.addAll(theirs.keySet());
    List<String> names = new ArrayList<>(link.columns(kind.table()));
    names.retainAll(either);
    either.removeAll(names);
    names.addAll(either);
    return names;
  }

  private static Map<String, String> fields(Link link, Kind kind, String json) throws SQLException {
    Map<String, String> fields = new LinkedHashMap<>();
    row(link, kind.table(), json, "$." + kind.table() + "[0]", Set.of()).forEach(fields::put);
    for (Kind.Part part : kind.parts()) {
      List<String> rows = new ArrayList<>();
      long count =
          link.count("SELECT coalesce(json_array_length(?, ?), 0)", json, "$." + part.table());
      for (int i = 0; i < count; i++) {
        String path = "$." + part.table() + "[" + i + "]";
        rows.add(
            row(link, part.table(), json, path, Set.of(part.owner())).values().stream()
                .collect(Collectors.joining(" ")));
      }
      if (!rows.isEmpty()) {
        fields.put(part.table(), rows.stream().sorted().collect(Collectors.joining("; ")));
      }
    }
    return fields;
  }

  private static Map<String, String> row(
      Link link, String table, String json, String path, Set<String> without) throws SQLException {
    Map<String, String> references = link.references(table);
    Map<String, String> fields = new LinkedHashMap<>();
    for (String column : link.columns(table)) {
      if (column.equals("id") || AsJson.STAMPS.contains(column) || without.contains(column)) {
        continue;
      }
      String value = link.one("SELECT json_extract(?, ?)", json, path + "." + column);
      if (value != null && !value.isEmpty()) {
        fields.put(column, called(link, references.get(column), value));
      }
    }
    return fields;
  }

  /** A reference is shown by what people call the thing. */
  private static String called(Link link, @Nullable String to, String value) throws SQLException {
    if (to == null || Kind.ALL.stream().noneMatch(kind -> kind.table().equals(to))) {
      return value;
    }
    String label = Kind.of(to).label();
    String name =
        label.isEmpty()
            ? null
            : link.one("SELECT " + label + " FROM main." + to + " WHERE id = ?", value);
    return name == null ? value : name;
  }
}
