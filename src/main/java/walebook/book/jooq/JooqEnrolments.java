package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.CLASS_STUDENT;
import static walebook.book.jooq.made.Tables.STUDENT;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.impl.DSL;
import walebook.book.Enrolments;
import walebook.book.Ids;
import walebook.book.jooq.made.tables.records.ClassStudentRecord;
import walebook.record.Stamp;
import walebook.record.Student;

/** Who is in which class, as rows. */
record JooqEnrolments(Access access, Clock clock) implements Enrolments {

  @Override
  public void join(UUID classId, UUID studentId, LocalDate joinedOn) {
    access.write(
        dsl -> {
          boolean known =
              dsl.fetchExists(
                  CLASS_STUDENT,
                  CLASS_STUDENT.CLASS_ID.eq(classId).and(CLASS_STUDENT.STUDENT_ID.eq(studentId)));
          if (!known) {
            access.insert(row(classId, studentId, joinedOn));
          }
          return known;
        });
  }

  private ClassStudentRecord row(UUID classId, UUID studentId, LocalDate joinedOn) {
    ClassStudentRecord row =
        Rows.stamped(new ClassStudentRecord(), Ids.next(), Stamp.fresh(clock.instant()));
    row.setClassId(classId);
    row.setStudentId(studentId);
    row.setJoinedOn(joinedOn);
    return row;
  }

  @Override
  public void leave(UUID classId, UUID studentId, LocalDate leftOn) {
    access.write(
        dsl -> {
          Condition which =
              CLASS_STUDENT.CLASS_ID.eq(classId).and(CLASS_STUDENT.STUDENT_ID.eq(studentId));
          UUID id =
              dsl.select(CLASS_STUDENT.ID)
                  .from(CLASS_STUDENT)
                  .where(which)
                  .fetchOne(CLASS_STUDENT.ID);
          if (id == null) {
            return 0;
          }
          access.changing(CLASS_STUDENT, id, Recorder.As.PLAIN);
          return dsl.update(CLASS_STUDENT)
              .set(CLASS_STUDENT.LEFT_ON, leftOn)
              .set(CLASS_STUDENT.CHANGED_AT, clock.millis())
              .set(CLASS_STUDENT.ROW_VERSION, CLASS_STUDENT.ROW_VERSION.plus(1))
              .where(CLASS_STUDENT.ID.eq(id))
              .execute();
        });
  }

  @Override
  public List<Student> studentsOf(UUID classId) {
    return list(classId, CLASS_STUDENT.LEFT_ON.isNull());
  }

  @Override
  public List<Student> everyoneOf(UUID classId) {
    return list(classId, DSL.noCondition());
  }

  private List<Student> list(UUID classId, Condition which) {
    List<Student> found =
        access.read(
            dsl ->
                dsl.select(STUDENT.fields())
                    .from(STUDENT)
                    .join(CLASS_STUDENT)
                    .on(CLASS_STUDENT.STUDENT_ID.eq(STUDENT.ID))
                    .where(CLASS_STUDENT.CLASS_ID.eq(classId))
                    .and(which)
                    .fetchInto(STUDENT)
                    .map(PeopleRows::student));
    return found.stream().sorted(PeopleRows.BY_NAME).toList();
  }
}
