package walebook.record;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A test piece: what was sewn on which cloth, how the machine was set, what was measured and seen.
 *
 * @param code six letters and digits that read well aloud, as printed on its label
 */
public record TestPiece(
    UUID id,
    String code,
    Whose whose,
    ClothUse cloth,
    Setting setting,
    Measure measure,
    Seen seen,
    @Nullable Parent parent,
    Stamp stamp) {
  public TestPiece {
    if (!PieceCode.isCode(code)) {
      throw new IllegalArgumentException("code is not a piece's code: " + code);
    }
    if (parent != null && parent.pieceId().equals(id)) {
      throw new IllegalArgumentException("parent must be another piece");
    }
  }

  /** The same piece, sewn by or for another. */
  public TestPiece with(Whose now) {
    return new TestPiece(id, code, now, cloth, setting, measure, seen, parent, stamp);
  }

  /** The same piece, measured otherwise. */
  public TestPiece with(Measure now) {
    return new TestPiece(id, code, whose, cloth, setting, now, seen, parent, stamp);
  }

  /** The same piece, seen otherwise. */
  public TestPiece with(Seen now) {
    return new TestPiece(id, code, whose, cloth, setting, measure, now, parent, stamp);
  }

  /** The same piece at another change. */
  public TestPiece with(Stamp now) {
    return new TestPiece(id, code, whose, cloth, setting, measure, seen, parent, now);
  }
}
