package walebook.act.lesson;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.lesson.PieceToSew;
import walebook.lesson.PlanReadings;
import walebook.record.PieceCode;
import walebook.record.PlannedPiece;
import walebook.record.PlannedReading;
import walebook.record.Stamp;

/** A piece or a reading of the plan as it is handed to its student. */
public final class HandOut {
  private HandOut() {}

  /** The planned pieces, not yet saved, each with a code that is on no other label of the book. */
  static List<PlannedPiece> all(
      Book book, List<PieceToSew> pieces, UUID lessonId, Stamp stamp, Random chance) {
    Set<String> drawn = new HashSet<>();
    List<PlannedPiece> planned = new ArrayList<>();
    for (PieceToSew each : pieces) {
      String code = PieceCode.draw(chance);
      while (!drawn.add(code) || book.lessons().isCodeTaken(code)) {
        code = PieceCode.draw(chance);
      }
      planned.add(piece(each, lessonId, code, stamp));
    }
    return planned;
  }

  /** The planned readings, not yet saved. */
  static List<PlannedReading> readings(
      List<PlanReadings.ToMeasure> readings, UUID lessonId, Stamp stamp) {
    return readings.stream()
        .map(
            each ->
                new PlannedReading(
                    Ids.next(),
                    lessonId,
                    each.studentId(),
                    each.place(),
                    each.control(),
                    false,
                    each.slot(),
                    each.clothId(),
                    each.grain(),
                    each.repeats(),
                    stamp))
        .toList();
  }

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
