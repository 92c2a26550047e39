package walebook.act.piece;

import org.jspecify.annotations.Nullable;
import walebook.compare.ClothStretch;
import walebook.record.Measure;
import walebook.record.PullReading;
import walebook.record.TestPiece;
import walebook.seam.PieceNumbers;
import walebook.seam.PieceVerdict;
import walebook.seam.SeamEnd;

/** The verdict on a piece, from its numbers and what is known of its cloth. */
public final class JudgePiece {
  private JudgePiece() {}

  public static PieceVerdict of(TestPiece piece, PieceRoom room) {
    return of(piece.measure(), room.stretch(piece.cloth()));
  }

  /**
   * Judges a measure.
   *
   * @param cloth what is known of the cloth's stretch in the seam's direction, or null
   */
  public static PieceVerdict of(Measure measure, @Nullable ClothStretch cloth) {
    PullReading pull = measure.counting();
    return PieceVerdict.of(
        new PieceNumbers(
            measure.gaugeMm(),
            measure.edgeBeforeMm(),
            measure.edgeSewnMm(),
            measure.edgePressedMm(),
            pull == null ? null : SeamEnd.of(pull.end().key()),
            pull == null ? null : pull.endMm(),
            cloth == null ? null : cloth.percent(),
            cloth == null ? null : cloth.uncertainty(),
            measure.needPercent(),
            ClothStretch.READ_TO_MM));
  }
}
