package walebook.act.lesson;

import java.util.UUID;
import walebook.book.Ids;
import walebook.lesson.PieceToSew;
import walebook.record.PlannedPiece;
import walebook.record.Stamp;

/** A piece of the plan as it is handed to its student. */
public final class HandOut {
  private HandOut() {}

  /**
   * The planned piece, not yet saved.
   *
   * @param code for its label; no other piece of the book may carry it
   */
  public static PlannedPiece piece(PieceToSew piece, UUID lessonId, String code, Stamp stamp) {
    return new PlannedPiece(
        Ids.next(),
        lessonId,
        piece.studentId(),
        code,
        piece.place(),
        piece.control(),
        false,
        piece.cell(),
        piece.clothId(),
        piece.asked(),
        stamp);
  }
}
