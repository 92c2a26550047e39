package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.BIN_ITEM;
import static walebook.book.jooq.made.Tables.CHANGE_LOG;
import static walebook.book.jooq.made.Tables.CLASS_STUDENT;
import static walebook.book.jooq.made.Tables.DRAFT;
import static walebook.book.jooq.made.Tables.DRAFT_FIELD;
import static walebook.book.jooq.made.Tables.GARMENT_SHEET;
import static walebook.book.jooq.made.Tables.GATHER_CONFLICT;
import static walebook.book.jooq.made.Tables.KEPT_BLOB;
import static walebook.book.jooq.made.Tables.NOTE;
import static walebook.book.jooq.made.Tables.ROW_ADDED;
import static walebook.book.jooq.made.Tables.STUDENT;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Table;
import org.jooq.impl.DSL;
import walebook.book.Privacy;
import walebook.book.StaleRow;
import walebook.book.jooq.made.tables.records.BinItemRecord;
import walebook.book.jooq.made.tables.records.StudentRecord;
import walebook.record.Mention;

/** Takes people out of the rows, the history and the bin; nothing of it is written down. */
record JooqPrivacy(Access access, Clock clock) implements Privacy {
  /** What belongs to a person whatever becomes of their pieces. */
  private static final Set<Table<?>> OWN = Set.of(GARMENT_SHEET, NOTE, CLASS_STUDENT);

  /** The field by which a draft says whose piece it is about. */
  private static final String WHOSE = "#student";

  @Override
  public Map<String, Integer> rowsOf(UUID studentId) {
    return access.read(
        dsl -> {
          Map<String, Integer> count = new TreeMap<>();
          // A piece that its maker measured hangs on them twice.
          Hanging.on(dsl, key(studentId)).stream()
              .map(on -> Wholes.Key.of(on.row()))
              .distinct()
              .forEach(row -> count.merge(row.table().getName(), 1, Integer::sum));
          return count;
        });
  }

  private static Wholes.Key key(UUID studentId) {
    return new Wholes.Key(STUDENT, studentId);
  }

  @Override
  public List<Mention> mentions(UUID studentId) {
    return access.read(dsl -> new NameInText(dsl, student(dsl, studentId)).mentions());
  }

  private static StudentRecord student(DSLContext dsl, UUID id) {
    StudentRecord found = dsl.selectFrom(STUDENT).where(STUDENT.ID.eq(id)).fetchOne();
    if (found == null) {
      throw new StaleRow(STUDENT.getName(), id);
    }
    return found;
  }

  @Override
  public void rename(UUID studentId, String standIn, String alias) {
    access.write(
        dsl -> {
          replaceName(dsl, student(dsl, studentId), standIn, alias);
          return studentId;
        });
  }

  private void replaceName(DSLContext dsl, StudentRecord student, String standIn, String alias) {
    // Another book may call them otherwise: that name would not be found by this one.
    dsl.deleteFrom(GATHER_CONFLICT)
        .where(GATHER_CONFLICT.ENTITY.eq(STUDENT.getName()))
        .and(
            GATHER_CONFLICT
                .OUR_ID
                .eq(student.getId())
                .or(GATHER_CONFLICT.ROW_ID.eq(student.getId())))
        .execute();
    new NameInText(dsl, student).replace(standIn);
    dsl.update(STUDENT)
        .set(STUDENT.NAME, standIn)
        .set(STUDENT.ALIAS, alias)
        .set(STUDENT.CHANGED_AT, clock.millis())
        .set(STUDENT.ROW_VERSION, STUDENT.ROW_VERSION.plus(1))
        .where(STUDENT.ID.eq(student.getId()))
        .execute();
  }

  @Override
  public void erase(UUID studentId, boolean withPieces, String standIn, String alias) {
    access.write(
        dsl -> {
          StudentRecord student = student(dsl, studentId);
          SqliteDefer.foreignKeys(dsl);
          dropDrafts(dsl, student);
          List<UUID> gone = takeRows(dsl, studentId, withPieces);
          dropHistory(dsl, studentId, gone, withPieces);
          dropBin(dsl, studentId, withPieces);
          dropConflicts(dsl, studentId, gone);
          dropStrayPictures(dsl);
          replaceName(dsl, student, standIn, alias);
          if (withPieces) {
            forgetMaker(dsl, studentId);
            dsl.deleteFrom(CHANGE_LOG).where(CHANGE_LOG.ENTITY_ID.eq(studentId)).execute();
            dsl.deleteFrom(ROW_ADDED).where(ROW_ADDED.ID.eq(studentId)).execute();
            dsl.deleteFrom(STUDENT).where(STUDENT.ID.eq(studentId)).execute();
          }
          return studentId;
        });
  }

  private static void dropDrafts(DSLContext dsl, StudentRecord student) {
    String id = student.getId().toString();
    dsl.deleteFrom(DRAFT)
        .where(DSL.position(DRAFT.OWNER, id).gt(0))
        .or(DSL.position(DRAFT.FORM, id).gt(0))
        .or(DRAFT.OWNER.eq(student.getName()))
        .or(
            DRAFT.ID.in(
                DSL.select(DRAFT_FIELD.DRAFT_ID)
                    .from(DRAFT_FIELD)
                    .where(DRAFT_FIELD.FIELD.eq(WHOSE).and(DRAFT_FIELD.TYPED.eq(id)))))
        .execute();
  }

  /** Deletes what is to go and gives its keys back. */
  private static List<UUID> takeRows(DSLContext dsl, UUID studentId, boolean withPieces) {
    List<UUID> gone = new ArrayList<>();
    for (Hanging.On on : Hanging.on(dsl, key(studentId))) {
      Table<?> table = on.row().getTable();
      if (OWN.contains(table) || (withPieces && !on.loose())) {
        Hanging.Gone all = Hanging.with(dsl, Wholes.Key.of(on.row()), /* hard= */ true);
        all.loosened().forEach(each -> loosen(dsl, each));
        for (int i = all.rows().size() - 1; i >= 0; i--) {
          Wholes.Key each = Wholes.Key.of(all.rows().get(i));
          dsl.deleteFrom(each.table()).where(Rows.id(each.table()).eq(each.id())).execute();
          gone.add(each.id());
        }
      } else if (withPieces) {
        loosen(dsl, on);
      }
    }
    return gone;
  }

  private static void loosen(DSLContext dsl, Hanging.On on) {
    Table<?> table = on.row().getTable();
    UUID nothing = null;
    dsl.update(table)
        .set(on.column(), nothing)
        .where(Rows.id(table).eq(on.row().get(Rows.id(table))))
        .execute();
  }

  private static void dropHistory(
      DSLContext dsl, UUID studentId, List<UUID> gone, boolean withPieces) {
    Condition theirs =
        holds(CHANGE_LOG.BEFORE_JSON, studentId).or(holds(CHANGE_LOG.AFTER_JSON, studentId));
    if (!withPieces) {
      theirs = theirs.and(CHANGE_LOG.ENTITY.in(OWN.stream().map(Table::getName).toList()));
    }
    List<UUID> ids = new ArrayList<>(gone);
    ids.addAll(
        dsl.selectDistinct(CHANGE_LOG.ENTITY_ID)
            .from(CHANGE_LOG)
            .where(theirs)
            .fetch(CHANGE_LOG.ENTITY_ID));
    for (UUID id : ids) {
      dsl.deleteFrom(CHANGE_LOG).where(CHANGE_LOG.ENTITY_ID.eq(id)).execute();
      dsl.deleteFrom(ROW_ADDED).where(ROW_ADDED.ID.eq(id)).execute();
    }
  }

  /** What another book says of them and nobody decided about yet. */
  private static void dropConflicts(DSLContext dsl, UUID studentId, List<UUID> gone) {
    dsl.deleteFrom(GATHER_CONFLICT)
        .where(holds(GATHER_CONFLICT.THEIRS_JSON, studentId))
        .or(GATHER_CONFLICT.OUR_ID.in(gone))
        .execute();
  }

  private static void dropBin(DSLContext dsl, UUID studentId, boolean withPieces) {
    Condition theirs = holds(BIN_ITEM.ROWS_JSON, studentId);
    if (!withPieces) {
      theirs = theirs.and(BIN_ITEM.ENTITY.in(OWN.stream().map(Table::getName).toList()));
    }
    for (BinItemRecord item : dsl.selectFrom(BIN_ITEM).where(theirs).fetch()) {
      dsl.deleteFrom(CHANGE_LOG).where(CHANGE_LOG.STEP_ID.eq(item.getStepId())).execute();
      dsl.deleteFrom(BIN_ITEM).where(BIN_ITEM.ID.eq(item.getId())).execute();
    }
  }

  private static Condition holds(Field<String> json, UUID studentId) {
    return DSL.position(json, "\"student_id\":\"" + studentId + "\"").gt(0);
  }

  /** Pictures that neither the bin nor the history can bring back any more. */
  private static void dropStrayPictures(DSLContext dsl) {
    for (UUID id : dsl.selectDistinct(KEPT_BLOB.ROW_ID).from(KEPT_BLOB).fetch(KEPT_BLOB.ROW_ID)) {
      boolean known =
          dsl.fetchExists(BIN_ITEM, DSL.position(BIN_ITEM.ROWS_JSON, id.toString()).gt(0))
              || dsl.fetchExists(CHANGE_LOG, CHANGE_LOG.ENTITY_ID.eq(id));
      if (!known) {
        dsl.deleteFrom(KEPT_BLOB).where(KEPT_BLOB.ROW_ID.eq(id)).execute();
      }
    }
  }

  private static void forgetMaker(DSLContext dsl, UUID studentId) {
    UUID nobody = null;
    dsl.update(CHANGE_LOG)
        .set(CHANGE_LOG.STUDENT_ID, nobody)
        .where(CHANGE_LOG.STUDENT_ID.eq(studentId))
        .execute();
    dsl.update(ROW_ADDED)
        .set(ROW_ADDED.STUDENT_ID, nobody)
        .where(ROW_ADDED.STUDENT_ID.eq(studentId))
        .execute();
  }

  @Override
  public void scrub() {
    access.scrub();
  }
}
