package walebook.book.jooq;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.Map;
import org.jooq.Converter;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Table;
import org.jooq.TableRecord;
import org.jooq.impl.DSL;

/**
 * Inserts of whole rows. jOOQ writes each table's statement once and the prepared statement is
 * kept, since writing sixty columns out anew would cost more than the insert itself.
 */
final class Inserts implements AutoCloseable {
  private final DSLContext context;
  private final Connection link;
  private final Map<Table<?>, PreparedStatement> prepared = new HashMap<>();

  Inserts(DSLContext context, Connection link) {
    this.context = context;
    this.link = link;
  }

  void add(TableRecord<?> row) {
    try {
      PreparedStatement insert = prepared.get(row.getTable());
      if (insert == null) {
        insert = prepare(row);
      }
      Field<?>[] fields = row.fields();
      for (int i = 0; i < fields.length; i++) {
        insert.setObject(i + 1, stored(fields[i], row.get(i)));
      }
      insert.executeUpdate();
    } catch (SQLException e) {
      forget(row.getTable(), e);
      throw Trouble.of(e);
    }
  }

  /** The driver throws some statements away that failed: the next insert prepares its own. */
  private void forget(Table<?> table, SQLException why) {
    try (PreparedStatement failed = prepared.remove(table)) {
      if (failed != null) {
        failed.clearParameters();
      }
    } catch (SQLException e) {
      why.addSuppressed(e);
    }
  }

  private PreparedStatement prepare(TableRecord<?> row) throws SQLException {
    Map<Field<?>, Object> empty = new java.util.LinkedHashMap<>();
    for (Field<?> field : row.fields()) {
      empty.put(field, DSL.param(field.getName(), field.getDataType()));
    }
    String sql = context.insertInto(row.getTable()).set(empty).getSQL();
    PreparedStatement insert = link.prepareStatement(sql);
    prepared.put(row.getTable(), insert);
    return insert;
  }

  @SuppressWarnings({"unchecked", "NullAway"})
  private static Object stored(Field<?> field, Object value) {
    Object plain = ((Converter<Object, Object>) field.getConverter()).to(value);
    return plain instanceof Boolean yes ? (yes ? 1L : 0L) : plain;
  }

  @Override
  public void close() throws SQLException {
    for (PreparedStatement each : prepared.values()) {
      each.close();
    }
  }
}
