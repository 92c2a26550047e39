package walebook.book.jooq;

import java.time.Instant;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record2;
import org.jooq.Table;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;

/** How many rows of a table meet a condition, and when one of them was last changed. */
record ClassTally(int count, @Nullable Instant last) {

  static ClassTally of(DSLContext dsl, Table<?> table, Condition which) {
    Field<Integer> count = DSL.count();
    Field<Long> last = DSL.max(Rows.field(table, "changed_at", Long.class));
    Record2<Integer, Long> found = dsl.select(count, last).from(table).where(which).fetchSingle();
    Long millis = found.get(last);
    return new ClassTally(found.get(count), millis == null ? null : Instant.ofEpochMilli(millis));
  }
}
