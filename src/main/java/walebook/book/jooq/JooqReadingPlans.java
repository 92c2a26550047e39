package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.CLOTH_READING;
import static walebook.book.jooq.made.Tables.LESSON;
import static walebook.book.jooq.made.Tables.PLANNED_READING;

import java.util.List;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import walebook.book.ReadingPlans;
import walebook.book.jooq.made.tables.records.PlannedReadingRecord;
import walebook.record.ClothReading;
import walebook.record.Grain;
import walebook.record.Keyed;
import walebook.record.PlannedReading;
import walebook.record.ReadingLine;

/** Plans of readings, with the readings made for them. */
record JooqReadingPlans(Access access) implements ReadingPlans {

  @Override
  public void plan(List<PlannedReading> readings) {
    access.write(
        dsl -> {
          readings.forEach(each -> access.insert(row(each)));
          return readings;
        });
  }

  @Override
  public void replan(PlannedReading reading) {
    access.update(row(reading));
  }

  @Override
  public List<ReadingLine> of(UUID lessonId) {
    return lines(LESSON.ID.eq(lessonId));
  }

  @Override
  public List<ReadingLine> ofClass(UUID classId) {
    return lines(LESSON.CLASS_ID.eq(classId));
  }

  @Override
  public List<ReadingLine> of(UUID classId, UUID studentId) {
    return lines(LESSON.CLASS_ID.eq(classId).and(PLANNED_READING.STUDENT_ID.eq(studentId)));
  }

  private List<ReadingLine> lines(Condition which) {
    return access.read(
        dsl -> {
          List<PlannedReading> plan = plan(dsl, which);
          List<UUID> lessons = plan.stream().map(PlannedReading::lessonId).distinct().toList();
          return ReadingLine.of(plan, lessons.isEmpty() ? List.of() : measured(dsl, lessons));
        });
  }

  private static List<PlannedReading> plan(DSLContext dsl, Condition which) {
    return dsl.select(PLANNED_READING.fields())
        .from(PLANNED_READING)
        .join(LESSON)
        .on(LESSON.ID.eq(PLANNED_READING.LESSON_ID))
        .where(which)
        .and(PLANNED_READING.IS_DROPPED.eq(false))
        .orderBy(LESSON.TAUGHT_ON, LESSON.ID, PLANNED_READING.STUDENT_ID, PLANNED_READING.PLACE)
        .fetchInto(PLANNED_READING)
        .map(JooqReadingPlans::planned);
  }

  private static List<ClothReading> measured(DSLContext dsl, List<UUID> lessons) {
    return dsl.selectFrom(CLOTH_READING)
        .where(CLOTH_READING.LESSON_ID.in(lessons))
        .and(CLOTH_READING.MEASURED_BY.isNotNull())
        .orderBy(CLOTH_READING.MEASURED_ON, CLOTH_READING.ID)
        .fetch()
        .map(ClothRows::reading);
  }

  @Override
  public @Nullable PlannedReading find(UUID plannedId) {
    PlannedReadingRecord row =
        access.read(
            dsl ->
                dsl.selectFrom(PLANNED_READING).where(PLANNED_READING.ID.eq(plannedId)).fetchOne());
    return row == null ? null : planned(row);
  }

  private static PlannedReadingRecord row(PlannedReading reading) {
    PlannedReadingRecord row =
        Rows.stamped(new PlannedReadingRecord(), reading.id(), reading.stamp());
    row.setLessonId(reading.lessonId());
    row.setStudentId(reading.studentId());
    row.setPlace((long) reading.place());
    row.setIsControl(reading.control());
    row.setIsDropped(reading.dropped());
    row.setSlot(reading.slot());
    row.setClothId(reading.clothId());
    row.setGrain(reading.grain().key());
    row.setRepeats((long) reading.repeats());
    return row;
  }

  static PlannedReading planned(PlannedReadingRecord row) {
    return new PlannedReading(
        row.getId(),
        row.getLessonId(),
        row.getStudentId(),
        Math.toIntExact(row.getPlace()),
        row.getIsControl(),
        row.getIsDropped(),
        row.getSlot(),
        row.getClothId(),
        Keyed.of(Grain.class, row.getGrain()),
        Math.toIntExact(row.getRepeats()),
        Rows.stamp(row));
  }
}
