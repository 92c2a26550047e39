package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.CHANGE_LOG;
import static walebook.book.jooq.made.Tables.NOTE;
import static walebook.book.jooq.made.Tables.PHOTO;
import static walebook.book.jooq.made.Tables.ROW_ADDED;
import static walebook.book.jooq.made.Tables.VALUE_MARK;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;
import walebook.record.Change;

/** The history of what belongs to a piece: its photos, notes and marks. */
record AroundPiece(DSLContext dsl, UUID pieceId) {

  List<Change> changes() {
    Set<UUID> ids = new LinkedHashSet<>();
    ids.addAll(dsl.select(PHOTO.ID).from(PHOTO).where(PHOTO.PIECE_ID.eq(pieceId)).fetch(PHOTO.ID));
    ids.addAll(dsl.select(NOTE.ID).from(NOTE).where(NOTE.PIECE_ID.eq(pieceId)).fetch(NOTE.ID));
    ids.addAll(
        dsl.select(VALUE_MARK.ID)
            .from(VALUE_MARK)
            .where(VALUE_MARK.PIECE_ID.eq(pieceId))
            .fetch(VALUE_MARK.ID));
    List<Change> all = new ArrayList<>(gone());
    all.forEach(each -> ids.remove(each.entityId()));
    if (!ids.isEmpty()) {
      all.addAll(
          JooqHistory.changes(
              dsl,
              CHANGE_LOG
                  .ENTITY
                  .in("photo", "note", "value_mark")
                  .and(CHANGE_LOG.ENTITY_ID.in(ids))));
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
            .in("photo", "note", "value_mark")
            .and(
                DSL.position(DSL.coalesce(CHANGE_LOG.BEFORE_JSON, CHANGE_LOG.AFTER_JSON), named)
                    .gt(0)));
  }
}
