package walebook.desk.pieces;

import org.jspecify.annotations.Nullable;
import walebook.act.piece.PieceEntry;
import walebook.act.piece.PieceField;
import walebook.act.piece.PieceRoom;
import walebook.act.piece.PieceSoFar;
import walebook.drawing.GaugePicture;
import walebook.drawing.GaugeReading;
import walebook.drawing.StitchForm;
import walebook.drawing.StitchPicture;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.quantity.ReadNumber;
import walebook.quantity.Unit;
import walebook.record.Measure;
import walebook.record.PullReading;
import walebook.record.SeamEnd;
import walebook.record.Setting;
import walebook.seam.PieceVerdict;
import walebook.seam.StitchType;

/**
 * What a piece's numbers mean: the verdict with its working, and the pictures to scale.
 *
 * @param stitch null while width or length is missing or cannot be drawn
 */
public record Meaning(PieceVerdict verdict, GaugePicture gauge, @Nullable StitchPicture stitch) {
  private static final double MOST_MM = 50;
  private static final double LEAST_MM = 0.1;

  /** The meaning of a piece being typed. */
  static Meaning of(PieceSoFar soFar, PieceEntry entry, PieceRoom room) {
    Measure measure = soFar.measure();
    GaugeReading reading =
        measure.counting() == null ? pulledTo(measure, entry, room.lengthUnit()) : gauge(measure);
    return new Meaning(
        soFar.judge(room),
        new GaugePicture(reading, room.lengthUnit()),
        soFar.setting() == null
            ? null
            : stitch(soFar.setting(), room.stitch(soFar.setting().stitchType())));
  }

  /** The meaning of a saved piece. */
  static Meaning of(
      Measure measure,
      Setting setting,
      @Nullable StitchType type,
      PieceVerdict verdict,
      Unit unit) {
    return new Meaning(verdict, new GaugePicture(gauge(measure), unit), stitch(setting, type));
  }

  static @Nullable StitchPicture stitch(Setting setting, @Nullable StitchType type) {
    Double width = setting.sewnWidthMm() == null ? setting.dialWidth() : setting.sewnWidthMm();
    Double length = setting.sewnLengthMm() == null ? setting.dialLength() : setting.sewnLengthMm();
    double wide = type != null && type.hasWidth() && width != null ? width : 0;
    boolean known = type != null && length != null && (!type.hasWidth() || width != null);
    if (type == null || length == null || !known) {
      return null;
    }
    boolean drawable = wide <= MOST_MM && length >= LEAST_MM && length <= MOST_MM;
    return drawable ? new StitchPicture(StitchForm.of(type), wide, length) : null;
  }

  private static GaugeReading gauge(Measure measure) {
    PullReading pull = measure.counting();
    GaugeReading.How how =
        pull == null
            ? GaugeReading.How.STRETCHED
            : pull.end() == SeamEnd.GAVE ? GaugeReading.How.GAVE : GaugeReading.How.HELD;
    return reading(measure, pull == null ? null : pull.endMm(), how);
  }

  /** A length that is typed before it is said whether it gave or held. */
  private static GaugeReading pulledTo(Measure measure, PieceEntry entry, Unit unit) {
    String typed = entry.at(PieceField.END_LENGTH);
    Answer<Double> read = ReadNumber.length(typed, unit, Place.field(PieceField.END_LENGTH.key()));
    Double length = read.isGood() && read.value() > 0 ? read.value() : null;
    return reading(measure, length, GaugeReading.How.STRETCHED);
  }

  private static GaugeReading reading(
      Measure measure, @Nullable Double stretched, GaugeReading.How how) {
    Double after = measure.edgePressedMm() == null ? measure.edgeSewnMm() : measure.edgePressedMm();
    return new GaugeReading(
        measure.gaugeMm(),
        stretched,
        how,
        measure.releasedMm(),
        after == null ? null : measure.edgeBeforeMm(),
        after);
  }
}
