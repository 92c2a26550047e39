package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.CHANGE_LOG;
import static walebook.book.jooq.made.Tables.CRITERION_TAG;
import static walebook.book.jooq.made.Tables.FEEDBACK;
import static walebook.book.jooq.made.Tables.NOTE;
import static walebook.book.jooq.made.Tables.PHOTO;
import static walebook.book.jooq.made.Tables.PIECE_CHECK;
import static walebook.book.jooq.made.Tables.ROW_ADDED;
import static walebook.book.jooq.made.Tables.VALUE_MARK;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.Table;
import org.jooq.impl.DSL;
import walebook.record.Change;

/** The history of what belongs to a piece: its photos, notes, marks and checks. */
record AroundPiece(DSLContext dsl, UUID pieceId) {
  private static final List<Table<?>> TABLES =
      List.of(PHOTO, NOTE, VALUE_MARK, PIECE_CHECK, FEEDBACK, CRITERION_TAG);
  private static final List<String> NAMES = TABLES.stream().map(Table::getName).toList();

  List<Change> changes() {
    Set<UUID> ids = new LinkedHashSet<>();
    for (Table<?> table : TABLES) {
      ids.addAll(
          dsl.select(Rows.id(table))
              .from(table)
              .where(Rows.field(table, "piece_id", UUID.class).eq(pieceId))
              .fetch(Rows.id(table)));
    }
    List<Change> all = new ArrayList<>(gone());
    all.forEach(each -> ids.remove(each.entityId()));
    if (!ids.isEmpty()) {
      all.addAll(
          JooqHistory.changes(dsl, CHANGE_LOG.ENTITY.in(NAMES).and(CHANGE_LOG.ENTITY_ID.in(ids))));
    }
    all.forEach(each -> ids.add(each.entityId()));
    if (!ids.isEmpty()) {
      dsl.selectFrom(ROW_ADDED)
          .where(ROW_ADDED.ID.in(ids))
          .fetch(row -> all.add(JooqHistory.change(row)));
    }
    all.sort(Comparator.comparing(Change::doneAt).thenComparing(Change::stepId).reversed());
    return all;
  }

  /** Changes whose row named the piece, also when the row is gone by now. */
  private List<Change> gone() {
    String named = "\"piece_id\":\"" + pieceId + "\"";
    return JooqHistory.changes(
        dsl,
        CHANGE_LOG
            .ENTITY
            .in(NAMES)
            .and(
                DSL.position(DSL.coalesce(CHANGE_LOG.BEFORE_JSON, CHANGE_LOG.AFTER_JSON), named)
                    .gt(0)));
  }
}
