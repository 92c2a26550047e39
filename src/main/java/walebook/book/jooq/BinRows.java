package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.BIN_ITEM;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jooq.DSLContext;
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
    for (TableRecord<?> row : Snapshots.rows(item.getRowsJson())) {
      boolean there =
          dsl.fetchExists(
              row.getTable(), Rows.id(row.getTable()).eq(row.get(Rows.id(row.getTable()))));
      if (!there) {
        kept.putBack(dsl, row);
      }
    }
    dsl.deleteFrom(BIN_ITEM).where(BIN_ITEM.ID.eq(item.getId())).execute();
  }
}
