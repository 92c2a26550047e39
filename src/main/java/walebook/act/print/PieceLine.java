package walebook.act.print;

import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.record.Lesson;
import walebook.record.PlannedPiece;
import walebook.record.TestPiece;

/**
 * A piece to be printed: planned, sewn, or both.
 *
 * @param lesson null for a piece of one's own
 */
record PieceLine(
    UUID studentId,
    String code,
    @Nullable Lesson lesson,
    @Nullable PlannedPiece planned,
    @Nullable TestPiece logged) {
  boolean control() {
    return planned != null && planned.control();
  }

  @Nullable UUID clothId() {
    if (logged != null) {
      return logged.cloth().clothId();
    }
    return planned == null ? null : planned.clothId();
  }
}
