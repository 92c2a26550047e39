package walebook.record;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A piece that a student is asked to sew.
 *
 * @param place its place in the student's order, from 1
 * @param control the piece that everybody in the class sews
 * @param dropped taken back by a new plan; kept, since its label may be out
 * @param cell the combination of levels it stands for, such as {@code width=2.5 length=2}
 * @param clothId null until the tutor has said which cloth of the room stands for the plan's
 */
public record PlannedPiece(
    UUID id,
    UUID lessonId,
    UUID studentId,
    String code,
    int place,
    boolean control,
    boolean dropped,
    String cell,
    @Nullable UUID clothId,
    PieceAsked asked,
    Stamp stamp) {
  /** Stands in the place of a combination where a garment of the student's own asks for it. */
  public static final String FOR_GARMENT = "garment";

  public PlannedPiece {
    Check.within("place", place, 1, 10_000);
    if (!PieceCode.isCode(code)) {
      throw new IllegalArgumentException("code is not a piece's code: " + code);
    }
  }

  /** Whether it is for a garment, and no part of the plan that its lesson dealt. */
  public boolean isForGarment() {
    return cell.equals(FOR_GARMENT);
  }

  /** The piece as a new plan took it back. */
  public PlannedPiece takenBack(Instant now) {
    return new PlannedPiece(
        id, lessonId, studentId, code, place, control, true, cell, clothId, asked, stamp.next(now));
  }
}
