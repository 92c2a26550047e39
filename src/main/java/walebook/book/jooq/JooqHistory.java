package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.CHANGE_LOG;
import static walebook.book.jooq.made.Tables.ROW_ADDED;
import static walebook.book.jooq.made.Tables.STEP_MIRROR;
import static walebook.book.jooq.made.Tables.TEST_PIECE;

import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.TableRecord;
import org.jspecify.annotations.Nullable;
import walebook.book.History;
import walebook.book.jooq.made.tables.records.ChangeLogRecord;
import walebook.book.jooq.made.tables.records.RowAddedRecord;
import walebook.book.jooq.made.tables.records.TestPieceRecord;
import walebook.record.By;
import walebook.record.Change;
import walebook.record.TestPiece;

/** The history of changes, as rows. */
record JooqHistory(Access access, Clock clock) implements History {
  private static final Comparator<Change> NEWEST_FIRST =
      Comparator.comparing(Change::doneAt)
          .thenComparing(Change::stepId)
          .thenComparing(each -> !each.isNew())
          .thenComparing(Change::id)
          .reversed();

  @Override
  public void madeBy(By by) {
    access.madeBy(by);
  }

  @Override
  public void underStep(UUID stepId, By by) {
    access.underStep(stepId, by);
  }

  @Override
  public void beginHere() {
    access.write(
        dsl ->
            dsl.deleteFrom(CHANGE_LOG).execute()
                + dsl.deleteFrom(ROW_ADDED).execute()
                + dsl.deleteFrom(STEP_MIRROR).execute());
  }

  @Override
  public List<Change> latest(int limit) {
    return access.read(
        dsl -> {
          List<Change> all = new ArrayList<>();
          dsl.selectFrom(CHANGE_LOG)
              .orderBy(CHANGE_LOG.DONE_AT.desc(), CHANGE_LOG.ID.desc())
              .limit(limit)
              .fetch(row -> all.add(change(row)));
          dsl.selectFrom(ROW_ADDED)
              .orderBy(ROW_ADDED.STEP_ID.desc(), ROW_ADDED.ID.desc())
              .limit(limit)
              .fetch(row -> all.add(change(row)));
          all.sort(NEWEST_FIRST);
          return List.copyOf(all.subList(0, Math.min(limit, all.size())));
        });
  }

  @Override
  public List<Change> of(String entity, UUID entityId) {
    return access.read(
        dsl -> {
          List<Change> all =
              changes(dsl, CHANGE_LOG.ENTITY.eq(entity).and(CHANGE_LOG.ENTITY_ID.eq(entityId)));
          Collections.reverse(all);
          dsl.selectFrom(ROW_ADDED)
              .where(ROW_ADDED.ID.eq(entityId))
              .and(ROW_ADDED.ENTITY.eq(entity))
              .fetch(row -> all.add(change(row)));
          return List.copyOf(all);
        });
  }

  @Override
  public List<Change> around(UUID pieceId) {
    return access.read(dsl -> new AroundPiece(dsl, pieceId).changes());
  }

  @Override
  public @Nullable Change find(UUID changeId) {
    List<Change> found = access.read(dsl -> changes(dsl, CHANGE_LOG.ID.eq(changeId)));
    return found.isEmpty() ? null : found.get(0);
  }

  @Override
  public List<Change> step(UUID stepId) {
    return access.read(dsl -> step(dsl, stepId));
  }

  static List<Change> step(DSLContext dsl, UUID stepId) {
    List<Change> all = new ArrayList<>();
    dsl.selectFrom(ROW_ADDED)
        .where(ROW_ADDED.STEP_ID.eq(stepId))
        .orderBy(ROW_ADDED.ID)
        .fetch(row -> all.add(change(row)));
    all.addAll(changes(dsl, CHANGE_LOG.STEP_ID.eq(stepId)));
    return all;
  }

  /** Changes of rows that were there, oldest first. */
  static List<Change> changes(DSLContext dsl, Condition which) {
    return new ArrayList<>(
        dsl.selectFrom(CHANGE_LOG)
            .where(which)
            .orderBy(CHANGE_LOG.ID)
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

  static Change change(RowAddedRecord row) {
    return new Change(
        row.getId(),
        row.getStepId(),
        Instant.ofEpochMilli(row.getCreatedAt()),
        new By(row.getWho(), row.getStudentId(), row.getTutorId()),
        "add",
        row.getEntity(),
        row.getId(),
        null,
        null,
        row.getIsUndone());
  }

  @Override
  public @Nullable UUID lastDone(@Nullable UUID studentId) {
    return access.read(dsl -> Steps.lastDone(dsl, studentId));
  }

  @Override
  public @Nullable UUID lastUndone(@Nullable UUID studentId) {
    return access.read(dsl -> Steps.lastUndone(dsl, studentId));
  }

  @Override
  public UUID undo(UUID stepId, By by) {
    return access.write(dsl -> new Steps(access, dsl, clock.instant(), by).undo(stepId));
  }

  @Override
  public UUID redo(UUID stepId, By by) {
    return access.write(dsl -> new Steps(access, dsl, clock.instant(), by).redo(stepId));
  }

  @Override
  public @Nullable String now(String entity, UUID entityId) {
    List<TableRecord<?>> rows =
        access.read(dsl -> Wholes.of(dsl, new Wholes.Key(Snapshots.table(entity), entityId)));
    return rows.isEmpty() ? null : Snapshots.of(rows);
  }

  @Override
  public @Nullable TestPiece pieceIn(String json) {
    List<TableRecord<?>> rows = Snapshots.rows(json);
    TestPieceRecord piece =
        rows.stream()
            .filter(each -> each.getTable().equals(TEST_PIECE))
            .map(TestPieceRecord.class::cast)
            .findFirst()
            .orElse(null);
    return piece == null ? null : PiecePartRows.piece(piece, rows);
  }

  @Override
  public String textIn(String json, String entity, UUID entityId, String column) {
    Field<?> field = Snapshots.table(entity).field(column);
    Object value =
        field == null ? null : Snapshots.one(Snapshots.rows(json), entity, entityId).get(field);
    return Objects.toString(value, "");
  }
}
