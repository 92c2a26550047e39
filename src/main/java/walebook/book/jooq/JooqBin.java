package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.BIN_ITEM;
import static walebook.book.jooq.made.Tables.CHANGE_LOG;
import static walebook.book.jooq.made.Tables.KEPT_BLOB;
import static walebook.book.jooq.made.Tables.TEST_PIECE;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Table;
import org.jooq.TableRecord;
import org.jooq.impl.DSL;
import walebook.book.Bin;
import walebook.book.Ids;
import walebook.book.StaleRow;
import walebook.book.jooq.made.tables.records.BinItemRecord;
import walebook.record.Binned;
import walebook.record.By;
import walebook.record.Change;

/** The bin: rows moved out of their tables, with the step that brings them back. */
record JooqBin(Access access, Clock clock) implements Bin {

  @Override
  public List<Binned> all() {
    return access.read(
        dsl -> dsl.selectFrom(BIN_ITEM).orderBy(BIN_ITEM.ID.desc()).fetch().map(JooqBin::binned));
  }

  private static Binned binned(BinItemRecord row) {
    return new Binned(
        row.getId(),
        row.getStepId(),
        row.getEntity(),
        row.getEntityId(),
        row.getRowsJson(),
        row.getWho(),
        Instant.ofEpochMilli(row.getCreatedAt()));
  }

  @Override
  public UUID put(String entity, UUID id, By by) {
    if (!CAN_BE_BINNED.contains(entity)) {
      throw new IllegalArgumentException("entity cannot be binned: " + entity);
    }
    UUID step = Ids.next();
    return access.write(
        dsl -> {
          Wholes.Key key = new Wholes.Key(Snapshots.table(entity), id);
          Hanging.Gone gone = Hanging.with(dsl, key, /* hard= */ false);
          if (gone.rows().isEmpty()) {
            throw new StaleRow(entity, id);
          }
          new BinRows(access, dsl, clock.instant()).keep(step, key, gone.rows(), by);
          Recorder.As as = new Recorder.As(by, Steps.BIN_PUT, step);
          gone.rows().forEach(row -> changing(row, as));
          gone.loosened().forEach(on -> changing(on.row(), as));
          SqliteDefer.foreignKeys(dsl);
          gone.loosened().forEach(on -> loosen(dsl, on));
          KeptRows kept = new KeptRows(access, clock.instant());
          for (int i = gone.rows().size() - 1; i >= 0; i--) {
            kept.takeOut(dsl, gone.rows().get(i));
          }
          return step;
        });
  }

  private void changing(TableRecord<?> row, Recorder.As as) {
    if (Wholes.isThing(row.getTable())) {
      access.changing(row.getTable(), row.get(Rows.id(row.getTable())), as);
    }
  }

  private void loosen(DSLContext dsl, Hanging.On on) {
    Table<?> table = on.row().getTable();
    UUID nothing = null;
    Field<Long> version = Rows.field(table, "row_version", Long.class);
    dsl.update(table)
        .set(on.column(), nothing)
        .set(version, version.plus(1))
        .set(Rows.field(table, "changed_at", Long.class), clock.millis())
        .where(Rows.id(table).eq(on.row().get(Rows.id(table))))
        .execute();
  }

  @Override
  public UUID restore(UUID itemId, By by) {
    return access.write(
        dsl -> {
          BinItemRecord item = dsl.selectFrom(BIN_ITEM).where(BIN_ITEM.ID.eq(itemId)).fetchOne();
          if (item == null) {
            throw new StaleRow(BIN_ITEM.getName(), itemId);
          }
          UUID step = Ids.next();
          Recorder.As as = new Recorder.As(by, Steps.BIN_RESTORE, step);
          List<TableRecord<?>> rows =
              Snapshots.ordered(item.getRowsJson(), item.getEntity(), item.getEntityId());
          rows.forEach(row -> changing(row, as));
          new BinRows(access, dsl, clock.instant()).putBack(item);
          tie(dsl, item, as);
          return step;
        });
  }

  /** Attempts that came after a piece follow it again, unless they follow another by now. */
  private void tie(DSLContext dsl, BinItemRecord item, Recorder.As as) {
    for (Change each : JooqHistory.changes(dsl, CHANGE_LOG.STEP_ID.eq(item.getStepId()))) {
      if (each.before() != null && each.after() != null) {
        UUID next = each.entityId();
        access.changing(TEST_PIECE, next, as);
        dsl.update(TEST_PIECE)
            .set(TEST_PIECE.PARENT_ID, item.getEntityId())
            .set(TEST_PIECE.ROW_VERSION, TEST_PIECE.ROW_VERSION.plus(1))
            .set(TEST_PIECE.CHANGED_AT, clock.millis())
            .where(TEST_PIECE.ID.eq(next))
            .and(TEST_PIECE.PARENT_ID.isNull())
            .execute();
      }
    }
  }

  @Override
  public int empty(By by) {
    return access.write(
        dsl -> {
          List<BinItemRecord> items = dsl.selectFrom(BIN_ITEM).fetch();
          for (BinItemRecord item : items) {
            for (TableRecord<?> row : Snapshots.rows(item.getRowsJson())) {
              dsl.deleteFrom(KEPT_BLOB)
                  .where(KEPT_BLOB.ROW_ID.eq(row.get(Rows.id(row.getTable()))))
                  .execute();
            }
            dsl.update(CHANGE_LOG)
                .set(CHANGE_LOG.ACT, Steps.BIN_GONE)
                .where(
                    CHANGE_LOG.STEP_ID.in(
                        DSL.select(CHANGE_LOG.STEP_ID)
                            .from(CHANGE_LOG)
                            .where(CHANGE_LOG.ENTITY_ID.eq(item.getEntityId()))
                            .and(CHANGE_LOG.ACT.in(Steps.BIN_PUT, Steps.BIN_RESTORE))))
                .execute();
          }
          dsl.deleteFrom(BIN_ITEM).execute();
          return items.size();
        });
  }
}
