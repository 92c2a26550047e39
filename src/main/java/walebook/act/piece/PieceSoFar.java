package walebook.act.piece;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import walebook.record.ClothUse;
import walebook.record.Measure;
import walebook.record.Setting;
import walebook.seam.PieceVerdict;

/**
 * What can be made of a half-typed piece: a mistake in one field takes nothing from the others.
 *
 * @param cloth null while cloth or grain is missing
 * @param setting null while the stitch is missing
 */
public record PieceSoFar(@Nullable ClothUse cloth, @Nullable Setting setting, Measure measure) {

  /** Reads an entry as it stands. */
  public static PieceSoFar of(PieceEntry entry, PieceRoom room, LocalDate today) {
    return ReadPiece.soFar(entry, room, today);
  }

  /** The verdict on what is known so far. */
  public PieceVerdict judge(PieceRoom room) {
    return JudgePiece.of(measure, cloth == null ? null : room.stretch(cloth));
  }
}
