package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.CLOTH_READING;
import static walebook.book.jooq.made.Tables.CLOTH_WASH;

import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import walebook.book.ClothLog;
import walebook.record.By;
import walebook.record.ClothReading;
import walebook.record.ClothWash;
import walebook.record.StretchReading;

/** Readings and washes of cloths. */
record JooqClothLog(Access access) implements ClothLog {

  @Override
  public void add(ClothReading reading) {
    access.insert(ClothRows.row(reading));
  }

  @Override
  public void add(ClothWash wash) {
    access.insert(ClothRows.row(wash));
  }

  @Override
  public @Nullable ClothReading find(UUID readingId) {
    List<ClothReading> found = readings(CLOTH_READING.ID.eq(readingId));
    return found.isEmpty() ? null : found.get(0);
  }

  @Override
  public void update(ClothReading reading, By by, String act, UUID stepId) {
    access.write(
        dsl -> {
          Recorder.As as = new Recorder.As(by, act, stepId);
          access.changing(CLOTH_READING, reading.id(), as);
          return Rows.update(dsl, ClothRows.row(reading));
        });
  }

  @Override
  public List<ClothReading> readingsOf(UUID clothId) {
    return readings(CLOTH_READING.CLOTH_ID.eq(clothId));
  }

  @Override
  public List<StretchReading> stretchesOf(Set<UUID> clothIds) {
    if (clothIds.isEmpty()) {
      return List.of();
    }
    return access.read(
        dsl ->
            new StretchReader()
                .all(
                    dsl.select(StretchReader.COLUMNS)
                        .from(CLOTH_READING)
                        .where(CLOTH_READING.CLOTH_ID.in(clothIds))
                        .orderBy(
                            CLOTH_READING.CLOTH_ID, CLOTH_READING.MEASURED_ON, CLOTH_READING.ID)));
  }

  @Override
  public List<ClothReading> allReadings() {
    return readings(DSL.noCondition());
  }

  private List<ClothReading> readings(Condition which) {
    return access.read(
        dsl ->
            dsl.selectFrom(CLOTH_READING)
                .where(which)
                .orderBy(CLOTH_READING.CLOTH_ID, CLOTH_READING.MEASURED_ON, CLOTH_READING.ID)
                .fetch()
                .map(ClothRows::reading));
  }

  @Override
  public List<ClothWash> washesOf(UUID clothId) {
    return access.read(
        dsl ->
            dsl.selectFrom(CLOTH_WASH)
                .where(CLOTH_WASH.CLOTH_ID.eq(clothId))
                .orderBy(CLOTH_WASH.WASHED_ON, CLOTH_WASH.ID)
                .fetch()
                .map(ClothRows::wash));
  }
}
