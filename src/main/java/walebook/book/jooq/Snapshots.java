package walebook.book.jooq;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jooq.Field;
import org.jooq.Table;
import org.jooq.TableRecord;
import org.jooq.tools.json.JSONObject;
import org.jooq.tools.json.JSONParser;
import org.jooq.tools.json.ParseException;
import org.jspecify.annotations.Nullable;
import walebook.book.jooq.made.DefaultSchema;

/**
 * A row with the rows that hang on it, as JSON: a list of rows under each table's name. Pictures
 * are left out; see {@link KeptRows}.
 */
final class Snapshots {
  private static final Set<String> STAMPS = Set.of("created_at", "changed_at", "row_version");

  private Snapshots() {}

  static String of(List<? extends TableRecord<?>> rows) {
    Map<String, List<Map<String, Object>>> all = new LinkedHashMap<>();
    for (TableRecord<?> row : rows) {
      Map<String, Object> columns = new LinkedHashMap<>();
      for (Field<?> field : row.fields()) {
        Object value = row.get(field);
        if (value != null && !(value instanceof byte[])) {
          columns.put(field.getName(), plain(value));
        }
      }
      all.computeIfAbsent(row.getTable().getName(), name -> new ArrayList<>()).add(columns);
    }
    return JSONObject.toJSONString(all);
  }

  private static Object plain(Object value) {
    return value instanceof Number || value instanceof Boolean ? value : value.toString();
  }

  /** The rows again, table by table in any order. */
  static List<TableRecord<?>> rows(String json) {
    List<TableRecord<?>> rows = new ArrayList<>();
    try {
      Map<?, ?> all = (Map<?, ?>) new JSONParser().parse(new StringReader(json));

      for (Map.Entry<?, ?> each : all.entrySet()) {
        Table<?> table = table(String.valueOf(each.getKey()));
        for (Object columns : (List<?>) each.getValue()) {
          rows.add(row(table, (Map<?, ?>) columns));
        }
      }
    } catch (java.io.IOException | ParseException e) {
      throw new IllegalStateException("the history holds no JSON: " + json, e);
    }
    return rows;
  }

  /** What the rows hold, whatever their order and stamps. */
  static Set<String> content(List<? extends TableRecord<?>> rows) {
    Set<String> all = new HashSet<>();
    for (TableRecord<?> row : rows) {
      StringBuilder text = new StringBuilder(row.getTable().getName());
      for (Field<?> field : row.fields()) {
        Object value = row.get(field);
        if (value != null && !(value instanceof byte[]) && !STAMPS.contains(field.getName())) {
          text.append('\n').append(field.getName()).append('=').append(value);
        }
      }
      all.add(text.toString());
    }
    return all;
  }

  /** The rows again, the thing's own first. */
  static List<TableRecord<?>> ordered(String json, String table, UUID id) {
    List<TableRecord<?>> rows = new ArrayList<>(rows(json));
    TableRecord<?> first = one(rows, table, id);
    rows.removeIf(row -> row == first);
    rows.add(0, first);
    return rows;
  }

  /** The row of one table among them. */
  static TableRecord<?> one(List<TableRecord<?>> rows, String table, UUID id) {
    return rows.stream()
        .filter(row -> row.getTable().getName().equals(table))
        .filter(row -> id.equals(row.get(Rows.id(row.getTable()))))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("the history lacks " + table + " " + id));
  }

  static Table<?> table(String name) {
    Table<?> table = DefaultSchema.DEFAULT_SCHEMA.getTable(name);
    if (table == null) {
      throw new IllegalStateException("the history names a table that is not there: " + name);
    }
    return table;
  }

  private static TableRecord<?> row(Table<?> table, Map<?, ?> columns) {
    TableRecord<?> row = (TableRecord<?>) table.newRecord();
    for (Field<?> field : table.fields()) {
      set(row, field, columns.get(field.getName()));
    }
    return row;
  }

  private static <T> void set(TableRecord<?> row, Field<T> field, @Nullable Object value) {
    row.set(field, field.getDataType().convert(value));
  }
}
