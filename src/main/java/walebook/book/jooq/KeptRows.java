package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.KEPT_BLOB;

import java.time.Instant;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Table;
import org.jooq.TableRecord;
import walebook.book.Ids;
import walebook.book.jooq.made.tables.records.KeptBlobRecord;
import walebook.record.Stamp;

/** Takes rows out of their tables and puts them back; pictures wait in a table of their own. */
record KeptRows(Access access, Instant now) {

  void takeOut(DSLContext dsl, TableRecord<?> row) {
    Table<?> table = row.getTable();
    UUID id = row.get(Rows.id(table));
    for (Field<?> field : table.fields()) {
      if (field.getType() == byte[].class) {
        keep(dsl, table, id, field.coerce(byte[].class));
      }
    }
    dsl.deleteFrom(table).where(Rows.id(table).eq(id)).execute();
  }

  private void keep(DSLContext dsl, Table<?> table, UUID id, Field<byte[]> field) {
    byte[] content = dsl.select(field).from(table).where(Rows.id(table).eq(id)).fetchOne(field);
    if (content == null) {
      return;
    }
    KeptBlobRecord row = Rows.stamped(new KeptBlobRecord(), Ids.next(), Stamp.fresh(now));
    row.setOfTable(table.getName());
    row.setRowId(id);
    row.setOfColumn(field.getName());
    row.setContent(content);
    access.insertUnseen(row);
  }

  void putBack(DSLContext dsl, TableRecord<?> row) {
    Table<?> table = row.getTable();
    UUID id = row.get(Rows.id(table));
    for (Field<?> field : table.fields()) {
      if (field.getType() == byte[].class) {
        KeptBlobRecord kept =
            dsl.selectFrom(KEPT_BLOB)
                .where(KEPT_BLOB.OF_TABLE.eq(table.getName()))
                .and(KEPT_BLOB.ROW_ID.eq(id))
                .and(KEPT_BLOB.OF_COLUMN.eq(field.getName()))
                .fetchOne();
        if (kept == null) {
          throw new walebook.book.StaleRow(table.getName(), id);
        }
        row.set(Rows.field(table, field.getName(), byte[].class), kept.getContent());
        dsl.deleteFrom(KEPT_BLOB).where(KEPT_BLOB.ID.eq(kept.getId())).execute();
      }
    }
    access.insertUnseen(row);
  }
}
