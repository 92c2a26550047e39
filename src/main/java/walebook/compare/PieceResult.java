package walebook.compare;

import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.record.ResultLine;
import walebook.record.SeamEnd;
import walebook.record.TestPiece;

/**
 * What one piece brings to a comparison.
 *
 * @param end null when the seam was not pulled
 * @param seamStretch percent; a lower bound when it held
 * @param seamShare of the cloth's stretch, percent; a lower bound when it held; null when the
 *     cloth's stretch is not known
 * @param edgeChange percent, after pressing where measured
 * @param grade 1 to 5
 * @param sewingMinutes at the machine
 * @param worstFault highest severity seen, 0 when none
 */
public record PieceResult(
    UUID pieceId,
    String code,
    UUID studentId,
    @Nullable SeamEnd end,
    @Nullable Double seamStretch,
    @Nullable Double seamShare,
    @Nullable Double edgeChange,
    @Nullable Integer grade,
    @Nullable Double sewingMinutes,
    int worstFault) {

  /** Reads a piece's results off it. */
  public static PieceResult of(TestPiece piece, @Nullable ClothStretch cloth) {
    return of(ResultLine.of(piece), cloth);
  }

  /** The results of a piece's line. */
  public static PieceResult of(ResultLine piece, @Nullable ClothStretch cloth) {
    Double stretch = piece.seamStretch();
    Double share =
        stretch == null || cloth == null || cloth.percent() <= 0
            ? null
            : Double.valueOf(100 * stretch / cloth.percent());
    return new PieceResult(
        piece.pieceId(),
        piece.code(),
        piece.studentId(),
        piece.end(),
        stretch,
        share,
        piece.edgeChange(),
        piece.grade(),
        piece.sewingMinutes(),
        piece.worstFault());
  }

  public boolean held() {
    return end == SeamEnd.HELD;
  }

  public boolean gave() {
    return end == SeamEnd.GAVE;
  }
}
