package walebook.book.jooq;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Consumer;
import org.jooq.DSLContext;
import org.jooq.TableRecord;
import org.jspecify.annotations.Nullable;
import walebook.book.Ids;
import walebook.book.jooq.made.tables.records.ChangeLogRecord;
import walebook.book.jooq.made.tables.records.RowAddedRecord;
import walebook.record.By;
import walebook.record.Stamp;

/**
 * What one transaction does to things: noted as it happens, written into the history before the
 * commit. A new thing is one short row, since it stands in the book itself; of a changed one both
 * states are kept whole.
 */
final class Recorder {
  /** How a change is called, by whom and in which step; what is null follows the transaction. */
  record As(@Nullable By by, @Nullable String act, @Nullable UUID stepId) {
    static final As PLAIN = new As(null, null, null);
  }

  private record Touched(boolean isNew, @Nullable String before, As as) {}

  private UUID stepId = Ids.next();
  private @Nullable By named;
  private final Map<Wholes.Key, Touched> touched = new LinkedHashMap<>();

  /** Puts what is noted under a step and a name. */
  void under(UUID step, By by) {
    stepId = step;
    named = by;
  }

  /** Hears of a new row. */
  void added(TableRecord<?> row) {
    if (Wholes.isThing(row.getTable())) {
      touched.putIfAbsent(Wholes.Key.of(row), new Touched(true, null, As.PLAIN));
      return;
    }
    Wholes.Key owner = Wholes.ownerOf(row);
    if (owner != null && !touched.containsKey(owner)) {
      throw new IllegalStateException("a part was added unseen to " + owner);
    }
  }

  /** Hears that a thing is about to change, before it does. */
  void changing(DSLContext dsl, Wholes.Key key, As as) {
    if (!touched.containsKey(key)) {
      List<TableRecord<?>> rows = Wholes.of(dsl, key);
      touched.put(key, new Touched(false, rows.isEmpty() ? null : Snapshots.of(rows), as));
    }
  }

  /** Writes everything down; the last thing in a transaction. */
  void write(DSLContext dsl, Instant now, By otherwise, Consumer<TableRecord<?>> insert) {
    touched.forEach(
        (key, how) -> {
          TableRecord<?> line = line(dsl, key, how, now, otherwise);
          if (line != null) {
            insert.accept(line);
          }
        });
    touched.clear();
  }

  private @Nullable TableRecord<?> line(
      DSLContext dsl, Wholes.Key key, Touched how, Instant now, By otherwise) {
    By usual = named == null ? otherwise : named;
    By by = how.as().by() == null ? usual : how.as().by();
    UUID step = how.as().stepId() == null ? stepId : how.as().stepId();
    if (how.isNew()) {
      RowAddedRecord row = Rows.stamped(new RowAddedRecord(), key.id(), Stamp.fresh(now));
      row.setStepId(step);
      row.setEntity(key.table().getName());
      row.setWho(by.name());
      row.setStudentId(by.studentId());
      row.setTutorId(by.tutorId());
      row.setIsUndone(false);
      return row;
    }
    List<TableRecord<?>> after = Wholes.of(dsl, key);
    if (how.before() == null && after.isEmpty()) {
      return null;
    }
    String plain = after.isEmpty() ? "remove" : "change";
    ChangeLogRecord row = Rows.stamped(new ChangeLogRecord(), Ids.next(), Stamp.fresh(now));
    row.setStepId(step);
    row.setDoneAt(now.toEpochMilli());
    row.setWho(by.name());
    row.setStudentId(by.studentId());
    row.setTutorId(by.tutorId());
    row.setAct(how.as().act() == null ? plain : how.as().act());
    row.setEntity(key.table().getName());
    row.setEntityId(key.id());
    row.setBeforeJson(how.before());
    row.setAfterJson(after.isEmpty() ? null : Snapshots.of(after));
    row.setIsUndone(false);
    return row;
  }
}
