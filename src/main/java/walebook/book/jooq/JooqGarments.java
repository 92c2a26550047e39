package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.GARMENT_EDGE;
import static walebook.book.jooq.made.Tables.GARMENT_GIRTH;
import static walebook.book.jooq.made.Tables.GARMENT_OPENING;
import static walebook.book.jooq.made.Tables.GARMENT_SHEET;
import static walebook.book.jooq.made.Tables.PRIVATE_GIRTH;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import walebook.book.Garments;
import walebook.book.Ids;
import walebook.book.jooq.made.tables.records.GarmentOpeningRecord;
import walebook.book.jooq.made.tables.records.GarmentSheetRecord;
import walebook.book.jooq.made.tables.records.PrivateGirthRecord;
import walebook.record.GarmentEdge;
import walebook.record.GarmentSheet;
import walebook.record.Stamp;

/** Garment sheets with their parts, and the private girths beside them. */
record JooqGarments(Access access, Clock clock) implements Garments {

  @Override
  public List<GarmentSheet> all() {
    return list(DSL.noCondition());
  }

  @Override
  public List<GarmentSheet> of(@Nullable UUID studentId) {
    return list(
        studentId == null
            ? GARMENT_SHEET.STUDENT_ID.isNull()
            : GARMENT_SHEET.STUDENT_ID.eq(studentId));
  }

  @Override
  public @Nullable GarmentSheet find(UUID id) {
    List<GarmentSheet> found = list(GARMENT_SHEET.ID.eq(id));
    return found.isEmpty() ? null : found.get(0);
  }

  private List<GarmentSheet> list(Condition which) {
    return access.read(
        dsl ->
            dsl.selectFrom(GARMENT_SHEET)
                .where(which)
                .orderBy(GARMENT_SHEET.CHANGED_AT.desc(), GARMENT_SHEET.ID.desc())
                .fetch()
                .map(row -> whole(dsl, row)));
  }

  private static GarmentSheet whole(DSLContext dsl, GarmentSheetRecord row) {
    return GarmentRows.sheet(
        row,
        dsl.selectFrom(GARMENT_GIRTH)
            .where(GARMENT_GIRTH.SHEET_ID.eq(row.getId()))
            .orderBy(GARMENT_GIRTH.ID)
            .fetch()
            .map(GarmentRows::girth),
        dsl.selectFrom(GARMENT_OPENING)
            .where(GARMENT_OPENING.SHEET_ID.eq(row.getId()))
            .orderBy(GARMENT_OPENING.ID)
            .fetch()
            .map(opening -> GarmentRows.opening(opening, edges(dsl, opening))));
  }

  private static List<GarmentEdge> edges(DSLContext dsl, GarmentOpeningRecord opening) {
    return dsl.selectFrom(GARMENT_EDGE)
        .where(GARMENT_EDGE.OPENING_ID.eq(opening.getId()))
        .orderBy(GARMENT_EDGE.ID)
        .fetch()
        .map(GarmentRows::edge);
  }

  @Override
  public void add(GarmentSheet sheet) {
    access.write(
        dsl -> {
          access.insert(GarmentRows.row(sheet));
          addParts(sheet);
          return sheet;
        });
  }

  @Override
  public void update(GarmentSheet sheet) {
    access.write(
        dsl -> {
          access.update(GarmentRows.row(sheet));
          dsl.deleteFrom(GARMENT_GIRTH).where(GARMENT_GIRTH.SHEET_ID.eq(sheet.id())).execute();
          dsl.deleteFrom(GARMENT_OPENING).where(GARMENT_OPENING.SHEET_ID.eq(sheet.id())).execute();
          addParts(sheet);
          return sheet;
        });
  }

  private void addParts(GarmentSheet sheet) {
    sheet
        .girths()
        .forEach(girth -> access.insert(GarmentRows.row(girth, sheet.id(), sheet.stamp())));
    sheet
        .openings()
        .forEach(
            opening -> {
              GarmentOpeningRecord row = GarmentRows.row(opening, sheet.id(), sheet.stamp());
              access.insert(row);
              opening
                  .edges()
                  .forEach(
                      edge -> access.insert(GarmentRows.row(edge, row.getId(), sheet.stamp())));
            });
  }

  @Override
  public Map<String, Double> bodyOf(UUID sheetId) {
    return access.read(
        dsl ->
            dsl.selectFrom(PRIVATE_GIRTH)
                .where(PRIVATE_GIRTH.SHEET_ID.eq(sheetId))
                .fetchMap(PRIVATE_GIRTH.GIRTH, PRIVATE_GIRTH.BODY_MM));
  }

  @Override
  public void keepBody(UUID sheetId, Map<String, Double> girthsMm) {
    access.write(
        dsl -> {
          dsl.deleteFrom(PRIVATE_GIRTH).where(PRIVATE_GIRTH.SHEET_ID.eq(sheetId)).execute();
          Stamp fresh = Stamp.fresh(clock.instant());
          girthsMm.forEach(
              (girth, mm) -> {
                PrivateGirthRecord row = Rows.stamped(new PrivateGirthRecord(), Ids.next(), fresh);
                row.setSheetId(sheetId);
                row.setGirth(girth);
                row.setBodyMm(mm);
                access.insert(row);
              });
          return girthsMm;
        });
  }
}
