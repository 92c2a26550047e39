package walebook.record;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A test piece cut down to what comparisons need, so that a whole class is read quickly.
 *
 * @param end how the counting pull ended; null when the seam was not pulled
 * @param seamStretch percent at the counting pull; a lower bound when it held
 * @param edgeChange percent, after pressing where that was measured
 * @param grade 1 to 5
 * @param sewingMinutes at the machine
 * @param worstFault highest severity seen, 0 when none or not asked for
 */
public record ResultLine(
    UUID pieceId,
    String code,
    UUID classId,
    UUID studentId,
    LocalDate sewnOn,
    SetTo setTo,
    @Nullable SeamEnd end,
    @Nullable Double seamStretch,
    @Nullable Double edgeChange,
    @Nullable Integer grade,
    @Nullable Double sewingMinutes,
    int worstFault) {

  /** The line of a whole piece. */
  public static ResultLine of(TestPiece piece) {
    PullReading pull = piece.measure().counting();
    return new ResultLine(
        piece.id(),
        piece.code(),
        piece.whose().classId(),
        piece.whose().studentId(),
        piece.whose().sewnOn(),
        SetTo.of(piece),
        pull == null ? null : pull.end(),
        piece.measure().seamStretchPercent(),
        piece.measure().edgeChangePercent(),
        piece.seen().grade(),
        piece.measure().sewingMinutes(),
        piece.seen().faults().stream().mapToInt(FaultSeen::severity).max().orElse(0));
  }

  /** The change from one length to another in percent of the first, null where one is missing. */
  public static @Nullable Double changePercent(@Nullable Double fromMm, @Nullable Double toMm) {
    return fromMm == null || toMm == null ? null : 100 * (toMm - fromMm) / fromMm;
  }
}
