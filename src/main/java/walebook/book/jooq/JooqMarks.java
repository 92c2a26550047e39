package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.VALUE_MARK;

import java.time.Clock;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jspecify.annotations.Nullable;
import walebook.book.Ids;
import walebook.book.Marks;
import walebook.book.jooq.made.tables.records.ValueMarkRecord;
import walebook.record.By;
import walebook.record.Keyed;
import walebook.record.Mark;
import walebook.record.MarkedValue;
import walebook.record.Stamp;
import walebook.record.ValueMark;

/** Marks on odd values. */
record JooqMarks(Access access, Clock clock) implements Marks {

  @Override
  public List<ValueMark> all() {
    return access.read(
        dsl ->
            dsl.selectFrom(VALUE_MARK)
                .orderBy(VALUE_MARK.CHANGED_AT.desc(), VALUE_MARK.ID.desc())
                .fetch()
                .map(JooqMarks::mark));
  }

  @Override
  public @Nullable ValueMark find(MarkedValue value, UUID targetId) {
    ValueMarkRecord row = access.read(dsl -> row(dsl, value, targetId));
    return row == null ? null : mark(row);
  }

  private static @Nullable ValueMarkRecord row(DSLContext dsl, MarkedValue value, UUID targetId) {
    Condition which = VALUE_MARK.MARKED_VALUE.eq(value.key()).and(target(value).eq(targetId));
    return dsl.selectFrom(VALUE_MARK).where(which).fetchOne();
  }

  private static Field<UUID> target(MarkedValue value) {
    return value.isOfCloth() ? VALUE_MARK.READING_ID : VALUE_MARK.PIECE_ID;
  }

  @Override
  public Set<UUID> setAside(MarkedValue value) {
    return new HashSet<>(
        access.read(
            dsl ->
                dsl.select(target(value))
                    .from(VALUE_MARK)
                    .where(VALUE_MARK.MARKED_VALUE.eq(value.key()))
                    .and(VALUE_MARK.MARK.eq(Mark.SET_ASIDE.key()))
                    .fetch(target(value))));
  }

  @Override
  public ValueMark put(
      MarkedValue value, UUID targetId, Mark mark, String reason, By by, UUID stepId) {
    Instant now = clock.instant();
    return access.write(
        dsl -> {
          ValueMarkRecord before = row(dsl, value, targetId);
          Stamp stamp = before == null ? Stamp.fresh(now) : Rows.stamp(before).next(now);
          UUID id = before == null ? Ids.next() : before.getId();
          ValueMark put = new ValueMark(id, value, targetId, mark, reason, by.name(), stamp);
          ValueMarkRecord after = row(put);
          access.changing(VALUE_MARK, id, new Recorder.As(by, "mark." + mark.key(), stepId));
          if (before == null) {
            access.insertUnseen(after);
          } else {
            Rows.update(dsl, after);
          }
          return put;
        });
  }

  private static ValueMarkRecord row(ValueMark mark) {
    ValueMarkRecord row = Rows.stamped(new ValueMarkRecord(), mark.id(), mark.stamp());
    row.set(target(mark.value()), mark.targetId());
    row.setMarkedValue(mark.value().key());
    row.setMark(mark.mark().key());
    row.setReason(mark.reason());
    row.setMadeBy(mark.madeBy());
    return row;
  }

  static ValueMark mark(ValueMarkRecord row) {
    MarkedValue value = Keyed.of(MarkedValue.class, row.getMarkedValue());
    return new ValueMark(
        row.getId(),
        value,
        row.get(target(value)),
        Keyed.of(Mark.class, row.getMark()),
        row.getReason(),
        row.getMadeBy(),
        Rows.stamp(row));
  }
}
