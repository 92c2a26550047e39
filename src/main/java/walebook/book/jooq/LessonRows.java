package walebook.book.jooq;

import org.jspecify.annotations.Nullable;
import walebook.book.jooq.made.tables.records.LessonRecord;
import walebook.book.jooq.made.tables.records.PackRecord;
import walebook.book.jooq.made.tables.records.PlannedPieceRecord;
import walebook.record.Grain;
import walebook.record.Keyed;
import walebook.record.Lesson;
import walebook.record.MachineKind;
import walebook.record.Method;
import walebook.record.Needle;
import walebook.record.NeedlePoint;
import walebook.record.PieceAsked;
import walebook.record.PlannedPiece;
import walebook.record.TaughtPack;

/** Packs, lessons and planned pieces as rows. */
final class LessonRows {
  private LessonRows() {}

  static PackRecord row(TaughtPack pack) {
    PackRecord row = Rows.stamped(new PackRecord(), pack.id(), pack.stamp());
    row.setName(pack.name());
    row.setVersion(pack.version());
    row.setTitle(pack.title());
    row.setContentHash(pack.contentHash());
    row.setPackYaml(pack.packYaml());
    row.setLessonMd(pack.lessonMd());
    return row;
  }

  static TaughtPack pack(PackRecord row) {
    return new TaughtPack(
        row.getId(),
        row.getName(),
        row.getVersion(),
        row.getTitle(),
        row.getContentHash(),
        row.getPackYaml(),
        row.getLessonMd(),
        Rows.stamp(row));
  }

  static LessonRecord row(Lesson lesson) {
    LessonRecord row = Rows.stamped(new LessonRecord(), lesson.id(), lesson.stamp());
    row.setClassId(lesson.classId());
    row.setPackId(lesson.packId());
    row.setTitle(lesson.title());
    row.setTaughtOn(lesson.taughtOn());
    return row;
  }

  static Lesson lesson(LessonRecord row) {
    return new Lesson(
        row.getId(),
        row.getClassId(),
        row.getPackId(),
        row.getTitle(),
        row.getTaughtOn(),
        Rows.stamp(row));
  }

  static PlannedPieceRecord row(PlannedPiece piece) {
    PlannedPieceRecord row = Rows.stamped(new PlannedPieceRecord(), piece.id(), piece.stamp());
    PieceAsked asked = piece.asked();
    row.setLessonId(piece.lessonId());
    row.setStudentId(piece.studentId());
    row.setCode(piece.code());
    row.setPlace((long) piece.place());
    row.setIsControl(piece.control());
    row.setIsDropped(piece.dropped());
    row.setCell(piece.cell());
    row.setClothId(piece.clothId());
    row.setGrain(asked.grain().key());
    row.setLayers((long) asked.layers());
    row.setMethod(asked.method().key());
    row.setMachineKind(asked.machineKind().key());
    row.setStitchType(asked.stitchType());
    row.setDialWidth(asked.dialWidth());
    row.setDialLength(asked.dialLength());
    Needle needle = asked.needle();
    row.setNeedlePoint(needle == null ? null : needle.point().key());
    row.setNeedleNm(needle == null ? null : (long) needle.nm());
    row.setHemMethod(asked.hemMethod());
    row.setStabiliser(asked.stabiliser());
    row.setNeedPercent(asked.needPercent());
    row.setReadingsAsked((long) asked.readings());
    return row;
  }

  static PlannedPiece planned(PlannedPieceRecord row) {
    PieceAsked asked =
        new PieceAsked(
            Keyed.of(Grain.class, row.getGrain()),
            Math.toIntExact(row.getLayers()),
            Keyed.of(Method.class, row.getMethod()),
            Keyed.of(MachineKind.class, row.getMachineKind()),
            row.getStitchType(),
            row.getDialWidth(),
            row.getDialLength(),
            needle(row.getNeedlePoint(), row.getNeedleNm()),
            row.getHemMethod(),
            row.getStabiliser(),
            row.getNeedPercent(),
            Math.toIntExact(row.getReadingsAsked()));
    return new PlannedPiece(
        row.getId(),
        row.getLessonId(),
        row.getStudentId(),
        row.getCode(),
        Math.toIntExact(row.getPlace()),
        row.getIsControl(),
        row.getIsDropped(),
        row.getCell(),
        row.getClothId(),
        asked,
        Rows.stamp(row));
  }

  static @Nullable Needle needle(@Nullable String point, @Nullable Long nm) {
    return point == null || nm == null
        ? null
        : new Needle(Keyed.of(NeedlePoint.class, point), Math.toIntExact(nm));
  }
}
