package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.FAULT_SEEN;
import static walebook.book.jooq.made.Tables.PIECE_PULL;
import static walebook.book.jooq.made.Tables.STUDENT;
import static walebook.book.jooq.made.Tables.TEST_PIECE;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.LongPredicate;
import java.util.stream.Collectors;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record1;
import org.jooq.Select;
import org.jooq.Table;
import org.jooq.impl.DSL;
import walebook.book.PieceOrder;
import walebook.record.FaultSeen;
import walebook.record.PullReading;
import walebook.record.TestPiece;

/**
 * The order as the numbers that the file has for its rows, eight bytes for each: a row is found by
 * its number at once, by its key only through an index of long words. The numbers hold until the
 * file is written anew.
 */
final class JooqPieceOrder implements PieceOrder {
  private static final Field<Long> ROW = DSL.field("{0}.rowid", Long.class, TEST_PIECE);

  private final Access access;
  private final PieceReader.Known known = new PieceReader.Known();

  /** The row's number, doubled; one more where pulls or faults stand in tables of their own. */
  private long[] rows = new long[1 << 10];

  private int size;

  private JooqPieceOrder(Access access) {
    this.access = access;
  }

  /** By the day sewn, then by the student's alias or name, then by code. */
  static PieceOrder of(Access access, Condition which, boolean aliases) {
    JooqPieceOrder order = new JooqPieceOrder(access);
    Condition pulled =
        DSL.exists(DSL.selectOne().from(PIECE_PULL).where(PIECE_PULL.PIECE_ID.eq(TEST_PIECE.ID)));
    Condition faulty =
        DSL.exists(DSL.selectOne().from(FAULT_SEEN).where(FAULT_SEEN.PIECE_ID.eq(TEST_PIECE.ID)));
    return access.read(
        dsl ->
            order.read(
                dsl.select(ROW, DSL.field(pulled.or(faulty)))
                    .from(TEST_PIECE)
                    .join(STUDENT)
                    .on(STUDENT.ID.eq(TEST_PIECE.STUDENT_ID))
                    .where(which)
                    .orderBy(
                        TEST_PIECE.SEWN_ON,
                        aliases ? STUDENT.ALIAS : STUDENT.NAME,
                        TEST_PIECE.CODE)));
  }

  private PieceOrder read(Select<?> query) {
    try (ResultSet row = query.fetchResultSet()) {
      while (row.next()) {
        if (size == rows.length) {
          rows = Arrays.copyOf(rows, size + size / 2);
        }
        rows[size] = 2 * row.getLong(1) + row.getLong(2);
        size++;
      }
    } catch (SQLException e) {
      throw Trouble.of(e);
    }
    return this;
  }

  @Override
  public int size() {
    return size;
  }

  /** One at a time, since what rows share is found again by all who read. */
  @Override
  public synchronized List<TestPiece> some(int from, int before) {
    Objects.checkFromToIndex(from, before, size);
    Table<?> some = list(from, before, row -> true);
    return access.read(
        dsl ->
            reader(dsl, from, before)
                .all(
                    dsl.select(PieceRow.COLUMNS)
                        .from(some)
                        .crossJoin(TEST_PIECE)
                        .where(ROW.eq(DSL.field("value", Long.class)))
                        .orderBy(DSL.field("json_each.rowid"))));
  }

  /** Most pieces have no parts in other tables, which are asked only for those that have some. */
  private PieceReader reader(DSLContext dsl, int from, int before) {
    boolean parts = Arrays.stream(rows, from, before).anyMatch(JooqPieceOrder::hasParts);
    if (!parts) {
      return new PieceReader(known, Map.of(), Map.of());
    }
    Select<Record1<UUID>> ids =
        DSL.select(TEST_PIECE.ID)
            .from(TEST_PIECE)
            .where(
                ROW.in(
                    DSL.select(DSL.field("value", Long.class))
                        .from(list(from, before, JooqPieceOrder::hasParts))));
    Map<UUID, List<PullReading>> pulls = PiecePartRows.pulls(dsl, ids);
    Map<UUID, List<FaultSeen>> faults = PiecePartRows.faults(dsl, ids);
    return new PieceReader(known, pulls, faults);
  }

  private static boolean hasParts(long row) {
    return (row & 1) == 1;
  }

  /** Numbers as one list of JSON: a statement with hundreds of marks takes longer than the rows. */
  private Table<?> list(int from, int before, LongPredicate which) {
    String all =
        Arrays.stream(rows, from, before)
            .filter(which)
            .mapToObj(row -> Long.toString(row / 2))
            .collect(Collectors.joining(",", "[", "]"));
    return DSL.table("json_each({0})", DSL.val(all));
  }
}
