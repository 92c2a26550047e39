package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.CHANGE_LOG;
import static walebook.book.jooq.made.Tables.ROW_ADDED;

import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Table;
import org.jooq.TableRecord;
import org.jspecify.annotations.Nullable;
import walebook.book.StaleRow;
import walebook.record.Change;

/**
 * Turns the changes of one step round. Whether a thing was changed since is a matter of what it
 * holds, not of its version, so that many steps on one thing can be taken back one by one.
 */
final class TurnChanges {
  private final Access access;
  private final DSLContext dsl;
  private final KeptRows kept;
  private final Recorder.As as;
  private final Instant now;

  TurnChanges(Access access, DSLContext dsl, Instant now, Recorder.As as) {
    this.access = access;
    this.dsl = dsl;
    this.kept = new KeptRows(access, now);
    this.as = as;
    this.now = now;
  }

  private static Wholes.Key key(Change change) {
    return new Wholes.Key(Snapshots.table(change.entity()), change.entityId());
  }

  /**
   * Looks whether everything is as the step left it.
   *
   * @throws StaleRow naming what is not, or what rests by now on a thing that would go
   */
  void check(List<Change> changes) {
    Set<Wholes.Key> going = new HashSet<>();
    Set<Wholes.Key> turned = new HashSet<>();
    for (Change each : changes) {
      List<TableRecord<?>> found = Wholes.of(dsl, key(each));
      if (!Snapshots.content(found).equals(Snapshots.content(left(each, found)))) {
        throw new StaleRow(each.entity(), each.entityId());
      }
      found.forEach(row -> (each.before() == null ? going : turned).add(Wholes.Key.of(row)));
    }
    turned.addAll(going);
    for (Wholes.Key key : going) {
      for (Hanging.On on : Hanging.on(dsl, key)) {
        Wholes.Key other = Wholes.Key.of(on.row());
        if (!turned.contains(other) && Wholes.isRecorded(other.table())) {
          throw new StaleRow(other.table().getName(), other.id());
        }
      }
    }
  }

  /** How the change left its thing. */
  private List<TableRecord<?>> left(Change change, List<TableRecord<?>> found) {
    if (!change.isNew()) {
      return change.after() == null ? List.of() : Snapshots.rows(change.after());
    }
    List<Change> later =
        JooqHistory.changes(
            dsl,
            CHANGE_LOG.ENTITY.eq(change.entity()).and(CHANGE_LOG.ENTITY_ID.eq(change.entityId())));
    if (later.isEmpty()) {
      if (found.isEmpty()) {
        throw new StaleRow(change.entity(), change.entityId());
      }
      return found;
    }
    String first = later.get(0).before();
    return first == null ? List.of() : Snapshots.rows(first);
  }

  /** Turns them round: first what goes, then what changes, then what comes back. */
  void apply(List<Change> changes) {
    SqliteDefer.foreignKeys(dsl);
    for (Change each : changes) {
      Wholes.Key key = key(each);
      access.changing(key.table(), key.id(), as);
    }
    for (int i = changes.size() - 1; i >= 0; i--) {
      Change each = changes.get(i);
      if (each.before() == null) {
        forget(key(each));
        takeOut(Wholes.of(dsl, key(each)), 0);
      }
    }
    for (Change each : changes) {
      if (each.before() != null && each.after() != null) {
        List<TableRecord<?>> before = ordered(each, each.before());
        takeOut(Wholes.of(dsl, key(each)), 1);
        change(before.get(0));
        before.subList(1, before.size()).forEach(row -> kept.putBack(dsl, row));
      }
    }
    for (int i = changes.size() - 1; i >= 0; i--) {
      Change each = changes.get(i);
      if (each.before() != null && each.after() == null) {
        List<TableRecord<?>> before = ordered(each, each.before());
        stamp(before.get(0), before.get(0));
        before.forEach(row -> kept.putBack(dsl, row));
      }
    }
  }

  /** The history may name a person who goes; the name written there stays. */
  private void forget(Wholes.Key key) {
    if (key.table().equals(walebook.book.jooq.made.Tables.STUDENT)) {
      UUID nobody = null;
      dsl.update(CHANGE_LOG)
          .set(CHANGE_LOG.STUDENT_ID, nobody)
          .where(CHANGE_LOG.STUDENT_ID.eq(key.id()))
          .execute();
      dsl.update(ROW_ADDED)
          .set(ROW_ADDED.STUDENT_ID, nobody)
          .where(ROW_ADDED.STUDENT_ID.eq(key.id()))
          .execute();
    }
  }

  private void takeOut(List<TableRecord<?>> rows, int from) {
    for (int i = rows.size() - 1; i >= from; i--) {
      kept.takeOut(dsl, rows.get(i));
    }
  }

  private void change(TableRecord<?> row) {
    Table<?> table = row.getTable();
    Field<Long> version = Rows.field(table, "row_version", Long.class);
    TableRecord<?> found =
        (TableRecord<?>)
            dsl.selectFrom(table).where(Rows.id(table).eq(row.get(Rows.id(table)))).fetchSingle();
    stamp(row, found);
    for (Field<?> field : table.fields()) {
      row.changed(field, field.getType() != byte[].class);
    }
    dsl.update(table).set(row).where(Rows.id(table).eq(row.get(Rows.id(table)))).execute();
    java.util.Objects.requireNonNull(row.get(version));
  }

  /** Coming back is a change, too: a form that was opened before must notice. */
  private void stamp(TableRecord<?> row, TableRecord<?> after) {
    Field<Long> version = Rows.field(row.getTable(), "row_version", Long.class);
    row.set(version, after.get(version) + 1);
    row.set(Rows.field(row.getTable(), "changed_at", Long.class), now.toEpochMilli());
  }

  private static List<TableRecord<?>> ordered(Change change, @Nullable String json) {
    return Snapshots.ordered(
        java.util.Objects.requireNonNull(json), change.entity(), change.entityId());
  }
}
