package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.BANK_COMMENT;
import static walebook.book.jooq.made.Tables.CHANGE_LOG;
import static walebook.book.jooq.made.Tables.CLASS_STUDENT;
import static walebook.book.jooq.made.Tables.CLOTH;
import static walebook.book.jooq.made.Tables.CLOTH_READING;
import static walebook.book.jooq.made.Tables.CLOTH_WASH;
import static walebook.book.jooq.made.Tables.CRITERION;
import static walebook.book.jooq.made.Tables.CRITERION_TAG;
import static walebook.book.jooq.made.Tables.FEEDBACK;
import static walebook.book.jooq.made.Tables.GARMENT_EDGE;
import static walebook.book.jooq.made.Tables.GARMENT_GIRTH;
import static walebook.book.jooq.made.Tables.GARMENT_OPENING;
import static walebook.book.jooq.made.Tables.GARMENT_SHEET;
import static walebook.book.jooq.made.Tables.KIT_PRICE;
import static walebook.book.jooq.made.Tables.LESSON;
import static walebook.book.jooq.made.Tables.MACHINE;
import static walebook.book.jooq.made.Tables.MACHINE_DIAL;
import static walebook.book.jooq.made.Tables.MACHINE_STITCH;
import static walebook.book.jooq.made.Tables.NOTE;
import static walebook.book.jooq.made.Tables.PACK;
import static walebook.book.jooq.made.Tables.PHOTO;
import static walebook.book.jooq.made.Tables.PIECE_CHECK;
import static walebook.book.jooq.made.Tables.PLANNED_PIECE;
import static walebook.book.jooq.made.Tables.PLANNED_READING;
import static walebook.book.jooq.made.Tables.ROW_ADDED;
import static walebook.book.jooq.made.Tables.SCHOOL_CLASS;
import static walebook.book.jooq.made.Tables.SHELVED_PACK;
import static walebook.book.jooq.made.Tables.STUDENT;
import static walebook.book.jooq.made.Tables.TERM;
import static walebook.book.jooq.made.Tables.TEST_PIECE;
import static walebook.book.jooq.made.Tables.TUTOR;
import static walebook.book.jooq.made.Tables.VALUE_MARK;

import java.sql.Connection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.SQLDialect;
import org.jooq.Select;
import org.jooq.Table;
import org.jooq.TableRecord;
import org.jooq.conf.Settings;
import org.jooq.impl.DSL;
import walebook.book.jooq.made.tables.records.ChangeLogRecord;
import walebook.record.DialReading;
import walebook.record.FaultSeen;
import walebook.record.PullReading;

/**
 * Reads what came from another book as the program will read it ever after: the tables' rules let
 * rows through that are no records, and one of them would shut a place of the window for good.
 */
record CameRows(DSLContext dsl) {

  /**
   * Reads them all.
   *
   * @throws IllegalArgumentException when one of them is no record
   */
  static void readAll(Connection link) {
    CameRows came =
        new CameRows(
            DSL.using(
                link,
                SQLDialect.SQLITE,
                new Settings().withRenderSchema(false).withExecuteLogging(false)));
    try {
      came.people();
      came.pieces();
      came.rest();
    } catch (IllegalArgumentException e) {
      throw e;
    } catch (RuntimeException e) {
      throw new IllegalArgumentException(e.getMessage(), e);
    }
  }

  private static Condition came(Field<?> key, Table<?> of) {
    return DSL.condition(
        "{0} IN (SELECT our_id FROM temp.plan WHERE entity = {1} AND fate IN ('new', 'take'))",
        key, DSL.inline(of.getName()));
  }

  private <R extends TableRecord<R>> void read(Table<R> table, Function<R, ?> record) {
    dsl.selectFrom(table).where(came(Rows.id(table), table)).fetch().map(record::apply);
  }

  /** Parts of records that came. */
  private <R extends TableRecord<R>> void parts(
      Table<R> table, Field<UUID> owner, Table<?> of, Function<R, ?> record) {
    dsl.selectFrom(table).where(came(owner, of)).fetch().map(record::apply);
  }

  private void people() {
    read(STUDENT, PeopleRows::student);
    for (Table<?> plain :
        List.of(
            TUTOR,
            TERM,
            SCHOOL_CLASS,
            CLASS_STUDENT,
            SHELVED_PACK,
            CRITERION_TAG,
            BANK_COMMENT,
            NOTE,
            ROW_ADDED)) {
      dsl.selectFrom(plain).where(came(Rows.id(plain), plain)).fetch();
    }
  }

  private void pieces() {
    Select<?> ids =
        dsl.select(TEST_PIECE.ID).from(TEST_PIECE).where(came(TEST_PIECE.ID, TEST_PIECE));
    Map<UUID, List<PullReading>> pulls = PiecePartRows.pulls(dsl, ids);
    Map<UUID, List<FaultSeen>> faults = PiecePartRows.faults(dsl, ids);
    read(
        TEST_PIECE,
        row ->
            PieceRows.piece(
                row,
                pulls.getOrDefault(row.getId(), List.of()),
                faults.getOrDefault(row.getId(), List.of())));
    read(PLANNED_PIECE, LessonRows::planned);
    read(PLANNED_READING, JooqReadingPlans::planned);
    read(PIECE_CHECK, AssessmentRows::check);
    read(FEEDBACK, AssessmentRows::feedback);
    read(CRITERION, AssessmentRows::criterion);
    read(PHOTO, JooqPhotos::info);
    read(VALUE_MARK, JooqMarks::mark);
  }

  private void rest() {
    read(CLOTH, ClothRows::cloth);
    read(CLOTH_READING, ClothRows::reading);
    read(CLOTH_WASH, ClothRows::wash);
    read(KIT_PRICE, JooqKitPrices::priced);
    read(PACK, LessonRows::pack);
    read(LESSON, LessonRows::lesson);
    Map<UUID, List<String>> stitches =
        dsl.selectFrom(MACHINE_STITCH)
            .where(came(MACHINE_STITCH.MACHINE_ID, MACHINE))
            .fetchGroups(MACHINE_STITCH.MACHINE_ID, MACHINE_STITCH.STITCH_TYPE);
    Map<UUID, List<DialReading>> dials =
        dsl.selectFrom(MACHINE_DIAL)
            .where(came(MACHINE_DIAL.MACHINE_ID, MACHINE))
            .fetchGroups(MACHINE_DIAL.MACHINE_ID, MachineRows::dial);
    read(
        MACHINE,
        row ->
            MachineRows.machine(
                row,
                stitches.getOrDefault(row.getId(), List.of()),
                dials.getOrDefault(row.getId(), List.of())));
    read(GARMENT_SHEET, row -> GarmentRows.sheet(row, List.of(), List.of()));
    parts(GARMENT_GIRTH, GARMENT_GIRTH.SHEET_ID, GARMENT_SHEET, GarmentRows::girth);
    parts(
        GARMENT_OPENING,
        GARMENT_OPENING.SHEET_ID,
        GARMENT_SHEET,
        row ->
            GarmentRows.opening(
                row,
                dsl.selectFrom(GARMENT_EDGE)
                    .where(GARMENT_EDGE.OPENING_ID.eq(row.getId()))
                    .fetch(GarmentRows::edge)));
    read(CHANGE_LOG, CameRows::states);
  }

  private static List<TableRecord<?>> states(ChangeLogRecord row) {
    return Stream.of(row.getBeforeJson(), row.getAfterJson())
        .filter(Objects::nonNull)
        .flatMap(json -> Snapshots.ordered(json, row.getEntity(), row.getEntityId()).stream())
        .toList();
  }
}
