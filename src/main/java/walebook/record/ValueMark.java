package walebook.record;

import java.util.UUID;

/**
 * A mark on one value.
 *
 * @param targetId the piece, or the reading where the value is a cloth's
 * @param reason why; never blank where the value is set aside
 * @param madeBy who marked it
 */
public record ValueMark(
    UUID id,
    MarkedValue value,
    UUID targetId,
    Mark mark,
    String reason,
    String madeBy,
    Stamp stamp) {
  public ValueMark {
    if (mark == Mark.SET_ASIDE) {
      Check.text("reason", reason);
    }
  }
}
