package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.FAULT_SEEN;
import static walebook.book.jooq.made.Tables.PLANNED_PIECE;
import static walebook.book.jooq.made.Tables.TEST_PIECE;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.BiConsumer;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.SelectField;
import org.jooq.impl.DSL;
import walebook.book.ResultFilter;
import walebook.book.Results;
import walebook.record.DoneLine;
import walebook.record.ResultLine;

/** The columns that comparisons need and no more, found by the index of classes or cloths. */
record JooqResults(Access access) implements Results {
  private static final List<Field<?>> SET_TO =
      List.of(
          TEST_PIECE.CLOTH_ID,
          TEST_PIECE.GRAIN,
          TEST_PIECE.STITCH_NAME,
          TEST_PIECE.DIAL_WIDTH,
          TEST_PIECE.DIAL_LENGTH,
          TEST_PIECE.NEEDLE_POINT,
          TEST_PIECE.NEEDLE_NM,
          TEST_PIECE.HEM_METHOD,
          TEST_PIECE.DIFFERENTIAL_FEED,
          TEST_PIECE.PRESSURE,
          TEST_PIECE.STABILISER,
          TEST_PIECE.MACHINE_ID);

  static final List<SelectField<?>> COLUMNS = columns();

  private static final List<SelectField<?>> DONE =
      List.of(
          TEST_PIECE.ID,
          TEST_PIECE.CODE,
          TEST_PIECE.STUDENT_ID,
          TEST_PIECE.LESSON_ID,
          TEST_PIECE.PLANNED_ID,
          TEST_PIECE.SEWN_ON);

  /** Three keys as one: the piece's own, whose it is, what it was set to; then what is in them. */
  private static List<SelectField<?>> columns() {
    List<SelectField<?>> columns = new ArrayList<>();
    columns.add(
        SharedKey.together(
            SharedKey.plain(
                TEST_PIECE.ID, TEST_PIECE.CODE, TEST_PIECE.PLANNED_ID, TEST_PIECE.SEAM_END),
            SharedKey.plain(
                TEST_PIECE.CLASS_ID,
                TEST_PIECE.STUDENT_ID,
                TEST_PIECE.SEWN_ON,
                TEST_PIECE.LESSON_ID),
            SharedKey.of(SET_TO.toArray(Field<?>[]::new))));
    columns.addAll(SET_TO);
    columns.addAll(
        List.of(
            TEST_PIECE.GAUGE_MM,
            TEST_PIECE.END_MM,
            TEST_PIECE.EDGE_BEFORE_MM,
            DSL.coalesce(TEST_PIECE.EDGE_PRESSED_MM, TEST_PIECE.EDGE_SEWN_MM),
            TEST_PIECE.GRADE,
            TEST_PIECE.SEWING_MINUTES));
    return List.copyOf(columns);
  }

  @Override
  public List<ResultLine> list(ResultFilter filter) {
    Condition which = condition(filter);
    return access.read(
        dsl -> {
          ResultReader reader = new ResultReader(filter.faults() ? faults(dsl, which) : Map.of());
          return reader.all(
              dsl.select(COLUMNS)
                  .from(TEST_PIECE)
                  .where(which)
                  .orderBy(TEST_PIECE.SEWN_ON, TEST_PIECE.ID));
        });
  }

  private static Map<UUID, Integer> faults(DSLContext dsl, Condition which) {
    var worst = DSL.max(FAULT_SEEN.SEVERITY).cast(Integer.class);
    return dsl.select(FAULT_SEEN.PIECE_ID, worst)
        .from(TEST_PIECE)
        .join(FAULT_SEEN)
        .on(FAULT_SEEN.PIECE_ID.eq(TEST_PIECE.ID))
        .where(which)
        .groupBy(FAULT_SEEN.PIECE_ID)
        .fetchMap(FAULT_SEEN.PIECE_ID, worst);
  }

  /** Lines first, then the worst fault. */
  @Override
  public void each(ResultFilter filter, BiConsumer<ResultLine, DoneLine> to) {
    Field<Integer> worst =
        DSL.field(
            DSL.select(DSL.max(FAULT_SEEN.SEVERITY).cast(Integer.class))
                .from(FAULT_SEEN)
                .where(FAULT_SEEN.PIECE_ID.eq(TEST_PIECE.ID)));
    List<SelectField<?>> columns = new ArrayList<>(COLUMNS);
    if (filter.faults()) {
      columns.add(worst);
    }
    access.<Boolean>read(
        dsl ->
            new ResultReader(Map.of())
                .each(
                    dsl.select(columns).from(TEST_PIECE).where(condition(filter)),
                    filter.faults(),
                    to));
  }

  @Override
  public List<DoneLine> done(ResultFilter filter) {
    List<DoneLine> lines = new ArrayList<>();
    access.<Boolean>read(
        dsl ->
            new ResultReader(Map.of())
                .done(dsl.select(DONE).from(TEST_PIECE).where(condition(filter)), lines::add));
    return lines;
  }

  @Override
  public Set<String> stitches(ResultFilter filter) {
    return new HashSet<>(
        access.read(
            dsl ->
                dsl.selectDistinct(TEST_PIECE.STITCH_NAME)
                    .from(TEST_PIECE)
                    .where(condition(filter))
                    .fetch(TEST_PIECE.STITCH_NAME)));
  }

  @Override
  public Set<UUID> controls(ResultFilter filter) {
    return new HashSet<>(
        access.read(
            dsl ->
                dsl.select(TEST_PIECE.ID)
                    .from(TEST_PIECE)
                    .join(PLANNED_PIECE)
                    .on(PLANNED_PIECE.ID.eq(TEST_PIECE.PLANNED_ID))
                    .where(condition(filter))
                    .and(PLANNED_PIECE.IS_CONTROL.isTrue())
                    .fetch(TEST_PIECE.ID)));
  }

  static Condition condition(ResultFilter filter) {
    Condition all = PieceSearch.within(filter.lessonId(), filter.studentId(), filter.clothId());
    if (filter.classIds().size() == 1) {
      all = all.and(TEST_PIECE.CLASS_ID.eq(filter.classIds().get(0)));
    } else if (!filter.classIds().isEmpty()) {
      all = all.and(TEST_PIECE.CLASS_ID.in(filter.classIds()));
    }
    return all;
  }
}
