package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.CHANGE_LOG;
import static walebook.book.jooq.made.Tables.GATHERED_ROW;
import static walebook.book.jooq.made.Tables.ROW_ADDED;
import static walebook.book.jooq.made.Tables.STEP_MIRROR;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Stream;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record1;
import org.jooq.Select;
import org.jooq.Table;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import walebook.book.Ids;
import walebook.book.jooq.made.tables.records.StepMirrorRecord;
import walebook.record.By;
import walebook.record.Change;
import walebook.record.Stamp;

/**
 * Steps back and forth. A step that takes another back is its mirror: the newest mirror of a step,
 * or the step itself, is always the one that is turned round next.
 */
final class Steps {
  /** Into the bin and out again; turning these round is a matter of the bin, too. */
  static final String BIN_PUT = "bin.put";

  static final String BIN_RESTORE = "bin.restore";

  /** What lay in a bin that was emptied since; nothing brings it back. */
  static final String BIN_GONE = "bin.gone";

  private final Access access;
  private final DSLContext dsl;
  private final Instant now;
  private final By by;

  Steps(Access access, DSLContext dsl, Instant now, By by) {
    this.access = access;
    this.dsl = dsl;
    this.now = now;
    this.by = by;
  }

  UUID undo(UUID stepId) {
    StepMirrorRecord mirror = mirror(stepId);
    if (mirror == null) {
      return turn(stepId, /* redo= */ false);
    }
    UUID root = mirror.getOfStepId();
    if (!stepId.equals(newest(root))) {
      throw nothing(stepId);
    }
    return turn(root, /* redo= */ !mirror.getIsRedo());
  }

  UUID redo(UUID stepId) {
    return turn(stepId, /* redo= */ true);
  }

  private UUID turn(UUID root, boolean redo) {
    List<Change> first = JooqHistory.step(dsl, root);
    if (first.isEmpty()
        || first.get(0).undone() != redo
        || first.stream().anyMatch(each -> each.act().equals(BIN_GONE))) {
      throw nothing(root);
    }
    UUID newest = newest(root);
    UUID made = Ids.next();
    String act = first.get(0).act();
    boolean goes = act.equals(redo ? BIN_PUT : BIN_RESTORE);
    boolean comes = act.equals(redo ? BIN_RESTORE : BIN_PUT);
    List<Change> changes = newest.equals(root) ? first : JooqHistory.step(dsl, newest);
    Recorder.As as = new Recorder.As(by, redo ? "redo" : "undo", made);
    TurnChanges turn = new TurnChanges(access, dsl, now, as);
    BinRows items = new BinRows(access, dsl, now);
    turn.check(changes);
    if (goes) {
      items.keep(root, first.get(0), by);
    }
    turn.apply(changes);
    if (comes) {
      items.takeOut(first.get(0));
    }
    StepMirrorRecord mirror = Rows.stamped(new StepMirrorRecord(), made, Stamp.fresh(now));
    mirror.setOfStepId(root);
    mirror.setIsRedo(redo);
    access.insertUnseen(mirror);
    mark(root, !redo);
    if (!newest.equals(root)) {
      mark(newest, true);
    }
    return made;
  }

  private static IllegalArgumentException nothing(UUID stepId) {
    return new IllegalArgumentException("nothing to take back in step " + stepId);
  }

  private @Nullable StepMirrorRecord mirror(UUID stepId) {
    return dsl.selectFrom(STEP_MIRROR).where(STEP_MIRROR.ID.eq(stepId)).fetchOne();
  }

  private UUID newest(UUID root) {
    UUID newest =
        dsl.select(STEP_MIRROR.ID)
            .from(STEP_MIRROR)
            .where(STEP_MIRROR.OF_STEP_ID.eq(root))
            .orderBy(STEP_MIRROR.ID.desc())
            .limit(1)
            .fetchOne(STEP_MIRROR.ID);
    return Objects.requireNonNullElse(newest, root);
  }

  /** Notes that a step was taken back, or stands again. */
  void mark(UUID stepId, boolean undone) {
    dsl.update(CHANGE_LOG)
        .set(CHANGE_LOG.IS_UNDONE, undone)
        .set(CHANGE_LOG.CHANGED_AT, now.toEpochMilli())
        .set(CHANGE_LOG.ROW_VERSION, CHANGE_LOG.ROW_VERSION.plus(1))
        .where(CHANGE_LOG.STEP_ID.eq(stepId))
        .execute();
    dsl.update(ROW_ADDED)
        .set(ROW_ADDED.IS_UNDONE, undone)
        .set(ROW_ADDED.CHANGED_AT, now.toEpochMilli())
        .set(ROW_ADDED.ROW_VERSION, ROW_ADDED.ROW_VERSION.plus(1))
        .where(ROW_ADDED.STEP_ID.eq(stepId))
        .execute();
  }

  static @Nullable UUID lastDone(DSLContext dsl, @Nullable UUID studentId) {
    return newestStep(dsl, false, studentId);
  }

  static @Nullable UUID lastUndone(DSLContext dsl, @Nullable UUID studentId) {
    UUID newest = newestStep(dsl, null, studentId);
    StepMirrorRecord last = null;
    for (StepMirrorRecord each :
        dsl.selectFrom(STEP_MIRROR)
            .where(STEP_MIRROR.IS_REDO.eq(false))
            .orderBy(STEP_MIRROR.ID.desc())
            .limit(500)
            .fetch()) {
      boolean isNewestOfRoot =
          !dsl.fetchExists(
              STEP_MIRROR,
              STEP_MIRROR.OF_STEP_ID.eq(each.getOfStepId()).and(STEP_MIRROR.ID.gt(each.getId())));
      if (isNewestOfRoot && isOf(dsl, each.getOfStepId(), studentId)) {
        last = each;
        break;
      }
    }
    boolean isPast = last != null && newest != null && newest.compareTo(last.getId()) > 0;
    return last == null || isPast ? null : last.getOfStepId();
  }

  private static boolean isOf(DSLContext dsl, UUID stepId, @Nullable UUID studentId) {
    return studentId == null
        || JooqHistory.step(dsl, stepId).stream()
            .allMatch(each -> studentId.equals(each.by().studentId()));
  }

  /** What was done in another book is not for this one's undo, however new it is. */
  private static Select<Record1<UUID>> fromElsewhere(Table<?> table) {
    return DSL.select(GATHERED_ROW.OUR_ID)
        .from(GATHERED_ROW)
        .where(GATHERED_ROW.ENTITY.eq(table.getName()))
        .and(GATHERED_ROW.IS_BORN.isTrue());
  }

  /** The newest step that is no mirror; of those undone, standing or both. */
  private static @Nullable UUID newestStep(
      DSLContext dsl, @Nullable Boolean undone, @Nullable UUID studentId) {
    Condition changed =
        CHANGE_LOG
            .STEP_ID
            .notIn(DSL.select(STEP_MIRROR.ID).from(STEP_MIRROR))
            .and(CHANGE_LOG.ACT.notIn(BIN_GONE, "gather", "gather.decide"))
            .and(CHANGE_LOG.ID.notIn(fromElsewhere(CHANGE_LOG)));
    Condition added = ROW_ADDED.ID.notIn(fromElsewhere(ROW_ADDED));
    if (undone != null) {
      changed = changed.and(CHANGE_LOG.IS_UNDONE.eq(undone));
      added = added.and(ROW_ADDED.IS_UNDONE.eq(undone));
    }
    if (studentId != null) {
      changed = changed.and(CHANGE_LOG.STUDENT_ID.eq(studentId));
      added = added.and(ROW_ADDED.STUDENT_ID.eq(studentId));
    }
    UUID one =
        dsl.select(CHANGE_LOG.STEP_ID)
            .from(CHANGE_LOG)
            .where(changed)
            .orderBy(CHANGE_LOG.STEP_ID.desc())
            .limit(1)
            .fetchOne(CHANGE_LOG.STEP_ID);
    UUID other =
        dsl.select(ROW_ADDED.STEP_ID)
            .from(ROW_ADDED)
            .where(added)
            .orderBy(ROW_ADDED.STEP_ID.desc())
            .limit(1)
            .fetchOne(ROW_ADDED.STEP_ID);
    return Stream.of(new @Nullable UUID[] {one, other})
        .filter(Objects::nonNull)
        .max((a, b) -> a.toString().compareTo(b.toString()))
        .orElse(null);
  }
}
