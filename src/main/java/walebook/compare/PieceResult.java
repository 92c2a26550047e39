package walebook.compare;

import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.record.PullReading;
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
    int worstFault) {

  /** Reads a piece's results off it. */
  public static PieceResult of(TestPiece piece, @Nullable ClothStretch cloth) {
    PullReading pull = piece.measure().counting();
    Double stretch = piece.measure().seamStretchPercent();
    Double share =
        stretch == null || cloth == null || cloth.percent() <= 0
            ? null
            : 100 * stretch / cloth.percent();
    return new PieceResult(
        piece.id(),
        piece.code(),
        piece.whose().studentId(),
        pull == null ? null : pull.end(),
        stretch,
        share,
        piece.measure().edgeChangePercent(),
        piece.seen().grade(),
        piece.seen().faults().stream().mapToInt(each -> each.severity()).max().orElse(0));
  }

  public boolean held() {
    return end == SeamEnd.HELD;
  }

  public boolean gave() {
    return end == SeamEnd.GAVE;
  }
}
