package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.LESSON;
import static walebook.book.jooq.made.Tables.PACK;
import static walebook.book.jooq.made.Tables.PACK_PICTURE;
import static walebook.book.jooq.made.Tables.PLANNED_PIECE;
import static walebook.book.jooq.made.Tables.TEST_PIECE;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jooq.Condition;
import org.jspecify.annotations.Nullable;
import walebook.book.Ids;
import walebook.book.Lessons;
import walebook.book.jooq.made.tables.records.LessonRecord;
import walebook.book.jooq.made.tables.records.PackPictureRecord;
import walebook.book.jooq.made.tables.records.PackRecord;
import walebook.book.jooq.made.tables.records.PlannedPieceRecord;
import walebook.record.Lesson;
import walebook.record.PlannedPiece;
import walebook.record.Stamp;
import walebook.record.TaughtPack;

/** Packs, lessons and plans. */
record JooqLessons(Access access, Clock clock) implements Lessons {

  @Override
  public @Nullable TaughtPack packByHash(String contentHash) {
    return onePack(PACK.CONTENT_HASH.eq(contentHash));
  }

  @Override
  public @Nullable TaughtPack pack(UUID packId) {
    return onePack(PACK.ID.eq(packId));
  }

  private @Nullable TaughtPack onePack(Condition which) {
    PackRecord row = access.read(dsl -> dsl.selectFrom(PACK).where(which).fetchOne());
    return row == null ? null : LessonRows.pack(row);
  }

  @Override
  public void keepPack(TaughtPack pack, Map<String, byte[]> pictures) {
    access.write(
        dsl -> {
          access.insert(LessonRows.row(pack));
          pictures.forEach((name, content) -> access.insert(picture(pack.id(), name, content)));
          return pack;
        });
  }

  private PackPictureRecord picture(UUID packId, String name, byte[] content) {
    PackPictureRecord row =
        Rows.stamped(new PackPictureRecord(), Ids.next(), Stamp.fresh(clock.instant()));
    row.setPackId(packId);
    row.setFileName(name);
    row.setContent(content);
    return row;
  }

  @Override
  public Map<String, byte[]> picturesOf(UUID packId) {
    return access.read(
        dsl ->
            dsl.selectFrom(PACK_PICTURE)
                .where(PACK_PICTURE.PACK_ID.eq(packId))
                .fetchMap(PACK_PICTURE.FILE_NAME, PACK_PICTURE.CONTENT));
  }

  @Override
  public void add(Lesson lesson) {
    access.insert(LessonRows.row(lesson));
  }

  @Override
  public @Nullable Lesson find(UUID lessonId) {
    LessonRecord row =
        access.read(dsl -> dsl.selectFrom(LESSON).where(LESSON.ID.eq(lessonId)).fetchOne());
    return row == null ? null : LessonRows.lesson(row);
  }

  @Override
  public List<Lesson> of(UUID classId) {
    return access.read(
        dsl ->
            dsl.selectFrom(LESSON)
                .where(LESSON.CLASS_ID.eq(classId))
                .orderBy(LESSON.TAUGHT_ON, LESSON.ID)
                .fetch()
                .map(LessonRows::lesson));
  }

  @Override
  public void plan(List<PlannedPiece> pieces) {
    access.write(
        dsl -> {
          pieces.forEach(each -> access.insert(LessonRows.row(each)));
          return pieces;
        });
  }

  @Override
  public void replan(PlannedPiece piece) {
    access.update(LessonRows.row(piece));
  }

  @Override
  public List<PlannedPiece> planOf(UUID lessonId) {
    return planned(PLANNED_PIECE.LESSON_ID.eq(lessonId));
  }

  @Override
  public List<PlannedPiece> planOf(UUID classId, UUID studentId) {
    return planned(
        PLANNED_PIECE
            .STUDENT_ID
            .eq(studentId)
            .and(
                PLANNED_PIECE.LESSON_ID.in(
                    org.jooq
                        .impl
                        .DSL
                        .select(LESSON.ID)
                        .from(LESSON)
                        .where(LESSON.CLASS_ID.eq(classId)))));
  }

  private List<PlannedPiece> planned(Condition which) {
    return access.read(
        dsl ->
            dsl.select(PLANNED_PIECE.fields())
                .from(PLANNED_PIECE)
                .join(LESSON)
                .on(LESSON.ID.eq(PLANNED_PIECE.LESSON_ID))
                .where(which)
                .and(PLANNED_PIECE.IS_DROPPED.eq(false))
                .orderBy(LESSON.TAUGHT_ON, LESSON.ID, PLANNED_PIECE.STUDENT_ID, PLANNED_PIECE.PLACE)
                .fetchInto(PLANNED_PIECE)
                .map(LessonRows::planned));
  }

  @Override
  public @Nullable PlannedPiece planned(UUID plannedId) {
    PlannedPieceRecord row =
        access.read(
            dsl -> dsl.selectFrom(PLANNED_PIECE).where(PLANNED_PIECE.ID.eq(plannedId)).fetchOne());
    return row == null ? null : LessonRows.planned(row);
  }

  @Override
  public @Nullable PlannedPiece plannedByCode(String code) {
    PlannedPieceRecord row =
        access.read(
            dsl -> dsl.selectFrom(PLANNED_PIECE).where(PLANNED_PIECE.CODE.eq(code)).fetchOne());
    return row == null ? null : LessonRows.planned(row);
  }

  @Override
  public boolean isCodeTaken(String code) {
    return access.read(
        dsl ->
            dsl.fetchExists(PLANNED_PIECE, PLANNED_PIECE.CODE.eq(code))
                || dsl.fetchExists(TEST_PIECE, TEST_PIECE.CODE.eq(code)));
  }
}
