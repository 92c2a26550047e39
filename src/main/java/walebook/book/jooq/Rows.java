package walebook.book.jooq;

import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;
import org.jooq.TableRecord;
import org.jspecify.annotations.Nullable;
import walebook.book.StaleRow;
import walebook.record.Stamp;

/** What every table has: a key, a stamp, and the check against lost updates. */
final class Rows {
  private Rows() {}

  static Field<UUID> id(Table<?> table) {
    return field(table, "id", UUID.class);
  }

  static <T> Field<T> field(Table<?> table, String name, Class<T> type) {
    Field<T> field = table.field(name, type);
    if (field == null) {
      throw new IllegalArgumentException(table + " has no " + name);
    }
    return field;
  }

  static Stamp stamp(Record row) {
    return new Stamp(
        java.time.Instant.ofEpochMilli(row.get("created_at", Long.class)),
        java.time.Instant.ofEpochMilli(row.get("changed_at", Long.class)),
        row.get("row_version", Long.class));
  }

  static <R extends TableRecord<R>> R stamped(R row, UUID id, Stamp stamp) {
    Table<?> table = row.getTable();
    row.set(id(table), id);
    row.set(field(table, "created_at", Long.class), stamp.created().toEpochMilli());
    row.set(field(table, "changed_at", Long.class), stamp.changed().toEpochMilli());
    row.set(field(table, "row_version", Long.class), stamp.version());
    return row;
  }

  /**
   * Updates a row whose saved version is the one before.
   *
   * @throws StaleRow when it is not
   */
  static <R extends TableRecord<R>> int update(DSLContext dsl, R row) {
    Table<R> table = row.getTable();
    UUID key = row.get(id(table));
    Field<Long> version = field(table, "row_version", Long.class);
    int changed =
        dsl.update(table)
            .set(row)
            .where(id(table).eq(key))
            .and(version.eq(row.get(version) - 1))
            .execute();
    if (changed == 0) {
      throw new StaleRow(table.getName(), key);
    }
    return changed;
  }

  static @Nullable Integer whole(@Nullable Long value) {
    return value == null ? null : Math.toIntExact(value);
  }

  static @Nullable Long whole(@Nullable Integer value) {
    return value == null ? null : value.longValue();
  }
}
