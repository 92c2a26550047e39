package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.CHANGE_LOG;

import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Table;
import org.jooq.TableRecord;
import org.jooq.exception.DataAccessException;
import org.jspecify.annotations.Nullable;
import walebook.book.History;
import walebook.book.Ids;
import walebook.book.StaleRow;
import walebook.book.jooq.made.tables.records.ChangeLogRecord;
import walebook.record.By;
import walebook.record.Change;
import walebook.record.Stamp;

/** The history of changes, and the way back through it. */
record JooqHistory(Access access, Clock clock) implements History {

  /** Writes a change down; call it inside the transaction that makes it. */
  static void note(
      Access access,
      Instant at,
      By by,
      String act,
      UUID stepId,
      @Nullable List<? extends TableRecord<?>> before,
      @Nullable List<? extends TableRecord<?>> after) {
    List<? extends TableRecord<?>> known = after == null ? before : after;
    if (known == null || known.isEmpty()) {
      throw new IllegalArgumentException("a change has a before or an after");
    }
    TableRecord<?> entity = known.get(0);
    ChangeLogRecord row = Rows.stamped(new ChangeLogRecord(), Ids.next(), Stamp.fresh(at));
    row.setStepId(stepId);
    row.setDoneAt(at.toEpochMilli());
    row.setWho(by.name());
    row.setStudentId(by.studentId());
    row.setTutorId(by.tutorId());
    row.setAct(act);
    row.setEntity(entity.getTable().getName());
    row.setEntityId(entity.get(Rows.id(entity.getTable())));
    row.setBeforeJson(before == null ? null : Snapshots.of(before));
    row.setAfterJson(after == null ? null : Snapshots.of(after));
    row.setIsUndone(false);
    access.insert(row);
  }

  @Override
  public void noteNew(Made kind, UUID id, By by, String act, UUID stepId) {
    access.write(
        dsl -> {
          note(access, clock.instant(), by, act, stepId, null, NewRows.of(dsl, kind, id));
          return id;
        });
  }

  @Override
  public List<Change> latest(int limit) {
    return access.read(
        dsl ->
            dsl.selectFrom(CHANGE_LOG)
                .orderBy(CHANGE_LOG.DONE_AT.desc(), CHANGE_LOG.ID.desc())
                .limit(limit)
                .fetch()
                .map(JooqHistory::change));
  }

  @Override
  public List<Change> of(String entity, UUID entityId) {
    return list(CHANGE_LOG.ENTITY.eq(entity).and(CHANGE_LOG.ENTITY_ID.eq(entityId)), false);
  }

  @Override
  public @Nullable Change find(UUID changeId) {
    List<Change> found = list(CHANGE_LOG.ID.eq(changeId), true);
    return found.isEmpty() ? null : found.get(0);
  }

  @Override
  public List<Change> step(UUID stepId) {
    return list(CHANGE_LOG.STEP_ID.eq(stepId), true);
  }

  private List<Change> list(Condition which, boolean oldestFirst) {
    return access.read(
        dsl ->
            dsl.selectFrom(CHANGE_LOG)
                .where(which)
                .orderBy(oldestFirst ? CHANGE_LOG.ID.asc() : CHANGE_LOG.ID.desc())
                .fetch()
                .map(JooqHistory::change));
  }

  private static Change change(ChangeLogRecord row) {
    return new Change(
        row.getId(),
        row.getStepId(),
        Instant.ofEpochMilli(row.getDoneAt()),
        new By(row.getWho(), row.getStudentId(), row.getTutorId()),
        row.getAct(),
        row.getEntity(),
        row.getEntityId(),
        row.getBeforeJson(),
        row.getAfterJson(),
        row.getIsUndone());
  }

  @Override
  public void undo(UUID stepId, By by) {
    UUID undoing = Ids.next();
    access.write(
        dsl -> {
          List<Change> changes = new ArrayList<>(step(stepId));
          if (changes.isEmpty() || changes.stream().anyMatch(Change::undone)) {
            throw new IllegalArgumentException("nothing to take back in step " + stepId);
          }
          for (int i = changes.size() - 1; i >= 0; i--) {
            takeBack(dsl, changes.get(i), by, undoing);
          }
          dsl.update(CHANGE_LOG)
              .set(CHANGE_LOG.IS_UNDONE, true)
              .set(CHANGE_LOG.CHANGED_AT, clock.millis())
              .set(CHANGE_LOG.ROW_VERSION, CHANGE_LOG.ROW_VERSION.plus(1))
              .where(CHANGE_LOG.STEP_ID.eq(stepId))
              .execute();
          return stepId;
        });
  }

  private void takeBack(DSLContext dsl, Change change, By by, UUID undoing) {
    List<TableRecord<?>> before = change.before() == null ? null : ordered(change, change.before());
    List<TableRecord<?>> after = change.after() == null ? null : ordered(change, change.after());
    Long version = after == null ? null : version(after.get(0));
    Table<?> table = Snapshots.table(change.entity());
    Long found =
        dsl.select(rowVersion(table))
            .from(table)
            .where(Rows.id(table).eq(change.entityId()))
            .fetchOne(rowVersion(table));
    if (!java.util.Objects.equals(found, version)) {
      throw new StaleRow(change.entity(), change.entityId());
    }
    if (after != null) {
      for (int i = after.size() - 1; i >= (before == null ? 0 : 1); i--) {
        delete(dsl, after.get(i), change);
      }
    }
    if (before != null) {
      restore(dsl, before, version);
    }
    note(access, clock.instant(), by, "undo", undoing, /* before= */ after, /* after= */ before);
  }

  private void restore(DSLContext dsl, List<TableRecord<?>> before, @Nullable Long version) {
    TableRecord<?> entity = before.get(0);
    entity.set(Rows.field(entity.getTable(), "changed_at", Long.class), clock.millis());
    if (version == null) {
      access.insert(entity);
    } else {
      entity.set(rowVersion(entity.getTable()), version + 1);
      update(dsl, entity);
    }
    before.subList(1, before.size()).forEach(access::insert);
  }

  private static List<TableRecord<?>> ordered(Change change, String json) {
    List<TableRecord<?>> rows = new ArrayList<>(Snapshots.rows(json));
    TableRecord<?> entity = Snapshots.one(rows, change.entity(), change.entityId());
    rows.removeIf(row -> row == entity);
    rows.add(0, entity);
    return rows;
  }

  private static Field<Long> rowVersion(Table<?> table) {
    return Rows.field(table, "row_version", Long.class);
  }

  private static Long version(TableRecord<?> row) {
    return row.get(rowVersion(row.getTable()));
  }

  /** A row that others were hung on since can't be taken away under them. */
  private static void delete(DSLContext dsl, TableRecord<?> row, Change change) {
    Table<?> table = row.getTable();
    try {
      dsl.deleteFrom(table).where(Rows.id(table).eq(row.get(Rows.id(table)))).execute();
    } catch (DataAccessException e) {
      if (Trouble.isConstraint(e)) {
        throw new StaleRow(change.entity(), change.entityId());
      }
      throw e;
    }
  }

  private static <R extends TableRecord<R>> void update(DSLContext dsl, TableRecord<?> row) {
    @SuppressWarnings("unchecked")
    R typed = (R) row;
    Rows.update(dsl, typed);
  }
}
