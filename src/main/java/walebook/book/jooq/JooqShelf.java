package walebook.book.jooq;

import java.util.List;
import java.util.UUID;
import java.util.function.Function;
import org.jooq.OrderField;
import org.jooq.Table;
import org.jooq.TableRecord;
import org.jspecify.annotations.Nullable;
import walebook.book.Shelf;

/**
 * A table whose rows stand for themselves.
 *
 * @param toRow made anew for each save
 */
record JooqShelf<T, R extends TableRecord<R>>(
    Access access,
    Table<R> table,
    List<? extends OrderField<?>> order,
    Function<T, R> toRow,
    Function<R, T> fromRow)
    implements Shelf<T> {

  @Override
  public List<T> all() {
    return access.read(dsl -> dsl.selectFrom(table).orderBy(order).fetch().map(fromRow::apply));
  }

  @Override
  public @Nullable T find(UUID id) {
    R row = access.read(dsl -> dsl.selectFrom(table).where(Rows.id(table).eq(id)).fetchOne());
    return row == null ? null : fromRow.apply(row);
  }

  @Override
  public void add(T row) {
    access.insert(toRow.apply(row));
  }

  @Override
  public void update(T row) {
    access.update(toRow.apply(row));
  }
}
