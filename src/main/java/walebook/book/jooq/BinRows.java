package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.BIN_ITEM;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.Table;
import org.jooq.TableRecord;
import walebook.book.Ids;
import walebook.book.StaleRow;
import walebook.book.jooq.made.tables.records.BinItemRecord;
import walebook.record.By;
import walebook.record.Change;
import walebook.record.Stamp;

/** The bin's own rows. */
record BinRows(Access access, DSLContext dsl, Instant now) {

  /** Notes what is about to go. */
  void keep(UUID stepId, Change put, By by) {
    Wholes.Key key = new Wholes.Key(Snapshots.table(put.entity()), put.entityId());
    keep(stepId, key, Hanging.with(dsl, key, /* hard= */ false).rows(), by);
  }

  void keep(UUID stepId, Wholes.Key key, List<TableRecord<?>> rows, By by) {
    BinItemRecord item = Rows.stamped(new BinItemRecord(), Ids.next(), Stamp.fresh(now));
    item.setStepId(stepId);
    item.setEntity(key.table().getName());
    item.setEntityId(key.id());
    item.setRowsJson(Snapshots.of(rows));
    item.setWho(by.name());
    access.insertUnseen(item);
  }

  /** Puts back what the history did not, such as girths of a body, and lets the item go. */
  void takeOut(Change put) {
    BinItemRecord item =
        dsl.selectFrom(BIN_ITEM)
            .where(BIN_ITEM.ENTITY.eq(put.entity()))
            .and(BIN_ITEM.ENTITY_ID.eq(put.entityId()))
            .fetchOne();
    if (item == null) {
      throw new StaleRow(put.entity(), put.entityId());
    }
    putBack(item);
  }

  void putBack(BinItemRecord item) {
    KeptRows kept = new KeptRows(access, now);
    SqliteDefer.foreignKeys(dsl);
    List<TableRecord<?>> rows = Snapshots.rows(item.getRowsJson());
    for (TableRecord<?> row : rows) {
      boolean there =
          dsl.fetchExists(
              row.getTable(), Rows.id(row.getTable()).eq(row.get(Rows.id(row.getTable()))));
      if (!there) {
        kept.putBack(dsl, row);
      }
    }
    dropStray(item, rows);
    dsl.deleteFrom(BIN_ITEM).where(BIN_ITEM.ID.eq(item.getId())).execute();
  }

  /** What belonged to something else as well that is no more, as a tag to its criterion, stays. */
  private void dropStray(BinItemRecord item, List<TableRecord<?>> rows) {
    for (TableRecord<?> row : rows) {
      Table<?> table = row.getTable();
      if (table.getName().equals(item.getEntity()) || !Wholes.isThing(table)) {
        continue;
      }
      UUID id = row.get(Rows.id(table));
      boolean stray =
          !dsl.fetch(
                  "SELECT 1 FROM pragma_foreign_key_check(?) AS broken JOIN "
                      + table.getName()
                      + " AS mine ON mine.rowid = broken.rowid WHERE mine.id = ?",
                  table.getName(),
                  id.toString())
              .isEmpty();
      if (stray) {
        dsl.deleteFrom(table).where(Rows.id(table).eq(id)).execute();
      }
    }
  }
}
