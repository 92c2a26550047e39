package walebook.act.bring;

import java.time.LocalDate;
import java.util.UUID;
import walebook.record.ClothUse;
import walebook.record.Measure;
import walebook.record.Seen;
import walebook.record.Setting;
import walebook.record.TestPiece;

/** Everything of a piece but its code and place in a plan: without a code, two alike are one. */
record Likeness(
    UUID student, LocalDate sewnOn, ClothUse cloth, Setting setting, Measure measure, Seen seen) {
  static Likeness of(TestPiece piece) {
    return new Likeness(
        piece.whose().studentId(),
        piece.whose().sewnOn(),
        piece.cloth(),
        piece.setting(),
        piece.measure(),
        piece.seen());
  }
}
