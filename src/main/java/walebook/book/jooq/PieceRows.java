package walebook.book.jooq;

import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.book.jooq.made.tables.records.TestPieceRecord;
import walebook.record.Broke;
import walebook.record.ClothUse;
import walebook.record.FaultSeen;
import walebook.record.Fold;
import walebook.record.Grain;
import walebook.record.How;
import walebook.record.Keyed;
import walebook.record.MachineKind;
import walebook.record.Measure;
import walebook.record.Method;
import walebook.record.Needle;
import walebook.record.Parent;
import walebook.record.PieceOutcome;
import walebook.record.Pull;
import walebook.record.PullReading;
import walebook.record.SeamEnd;
import walebook.record.Seen;
import walebook.record.Setting;
import walebook.record.Step;
import walebook.record.TestPiece;
import walebook.record.Whose;

/** Test pieces as rows. */
final class PieceRows {
  private PieceRows() {}

  static TestPieceRecord row(TestPiece piece) {
    TestPieceRecord row = Rows.stamped(new TestPieceRecord(), piece.id(), piece.stamp());
    row.setCode(piece.code());
    Whose whose = piece.whose();
    row.setClassId(whose.classId());
    row.setStudentId(whose.studentId());
    row.setLessonId(whose.lessonId());
    row.setPlannedId(whose.plannedId());
    row.setSewnOn(whose.sewnOn());
    row.setClothId(piece.cloth().clothId());
    row.setGrain(piece.cloth().grain().key());
    row.setLayers((long) piece.cloth().layers());
    put(row, piece.setting());
    put(row, piece.measure());
    put(row, piece.seen());
    Parent parent = piece.parent();
    row.setParentId(parent == null ? null : parent.pieceId());
    row.setChangedFactor(parent == null ? "" : parent.changed());
    return row;
  }

  private static void put(TestPieceRecord row, Setting setting) {
    row.setMethod(setting.method().key());
    row.setMachineId(setting.machineId());
    row.setMachineKind(setting.machineKind().key());
    row.setStitchType(setting.stitchType());
    row.setStitchName(setting.stitchName());
    row.setDialWidth(setting.dialWidth());
    row.setDialLength(setting.dialLength());
    row.setSewnWidthMm(setting.sewnWidthMm());
    row.setSewnLengthMm(setting.sewnLengthMm());
    Needle needle = setting.needle();
    row.setNeedlePoint(needle == null ? null : needle.point().key());
    row.setNeedleNm(needle == null ? null : (long) needle.nm());
    row.setThread(setting.thread());
    row.setPressure(Keyed.keyOf(setting.pressure()));
    row.setPressureDial(setting.pressureDial());
    row.setTension(Keyed.keyOf(setting.tension()));
    row.setTensionDial(setting.tensionDial());
    row.setDifferentialFeed(setting.differentialFeed());
    row.setStabiliser(setting.stabiliser());
    row.setHemMethod(setting.hemMethod());
  }

  private static void put(TestPieceRecord row, Measure measure) {
    row.setGaugeMm(measure.gaugeMm());
    row.setEdgeBeforeMm(measure.edgeBeforeMm());
    row.setEdgeSewnMm(measure.edgeSewnMm());
    row.setEdgePressedMm(measure.edgePressedMm());
    PullReading counting = measure.counting();
    row.setSeamEnd(counting == null ? null : counting.end().key());
    row.setEndMm(counting == null ? null : counting.endMm());
    row.setBroke(Keyed.keyOf(measure.broke()));
    row.setReleasedMm(measure.releasedMm());
    row.setRestS(measure.how().restS());
    row.setNeedPercent(measure.needPercent());
    row.setFold(Keyed.keyOf(measure.how().fold()));
    row.setPull(Keyed.keyOf(measure.how().pull()));
    row.setLoadG(measure.how().loadG());
    row.setHoldS(measure.how().holdS());
    row.setMeasuredBy(measure.measuredBy());
    row.setMeasuredOn(measure.measuredOn());
    row.setSewingMinutes(measure.sewingMinutes());
  }

  private static void put(TestPieceRecord row, Seen seen) {
    row.setGrade(Rows.whole(seen.grade()));
    row.setOutcome(Keyed.keyOf(seen.outcome()));
    row.setRemark(seen.remark());
  }

  static TestPiece piece(TestPieceRecord row, List<PullReading> pulls, List<FaultSeen> faults) {
    Parent parent =
        row.getParentId() == null ? null : new Parent(row.getParentId(), row.getChangedFactor());
    return new TestPiece(
        row.getId(),
        row.getCode(),
        new Whose(
            row.getClassId(),
            row.getStudentId(),
            row.getLessonId(),
            row.getPlannedId(),
            row.getSewnOn()),
        new ClothUse(
            row.getClothId(),
            Keyed.of(Grain.class, row.getGrain()),
            Math.toIntExact(row.getLayers())),
        setting(row),
        measure(row, pulls.isEmpty() ? onePull(row) : pulls),
        new Seen(
            Rows.whole(row.getGrade()),
            Keyed.find(PieceOutcome.class, row.getOutcome()),
            faults,
            row.getRemark()),
        parent,
        Rows.stamp(row));
  }

  private static Setting setting(TestPieceRecord row) {
    return new Setting(
        Keyed.of(Method.class, row.getMethod()),
        row.getMachineId(),
        Keyed.of(MachineKind.class, row.getMachineKind()),
        row.getStitchType(),
        row.getStitchName(),
        row.getDialWidth(),
        row.getDialLength(),
        row.getSewnWidthMm(),
        row.getSewnLengthMm(),
        LessonRows.needle(row.getNeedlePoint(), row.getNeedleNm()),
        row.getThread(),
        Keyed.find(Step.class, row.getPressure()),
        row.getPressureDial(),
        Keyed.find(Step.class, row.getTension()),
        row.getTensionDial(),
        row.getDifferentialFeed(),
        row.getStabiliser(),
        row.getHemMethod());
  }

  private static Measure measure(TestPieceRecord row, List<PullReading> pulls) {
    return new Measure(
        row.getGaugeMm(),
        row.getEdgeBeforeMm(),
        row.getEdgeSewnMm(),
        row.getEdgePressedMm(),
        pulls,
        Keyed.find(Broke.class, row.getBroke()),
        row.getReleasedMm(),
        row.getNeedPercent(),
        new How(
            Keyed.find(Fold.class, row.getFold()),
            Keyed.find(Pull.class, row.getPull()),
            row.getLoadG(),
            row.getHoldS(),
            row.getRestS()),
        row.getMeasuredBy(),
        row.getMeasuredOn(),
        row.getSewingMinutes());
  }

  private static List<PullReading> onePull(TestPieceRecord row) {
    SeamEnd end = Keyed.find(SeamEnd.class, row.getSeamEnd());
    @Nullable Double length = row.getEndMm();
    return end == null || length == null ? List.of() : List.of(new PullReading(1, end, length));
  }
}
