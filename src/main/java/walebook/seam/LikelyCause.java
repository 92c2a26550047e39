package walebook.seam;

import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.working.Message;

/**
 * A cause of a fault as it stands for one piece.
 *
 * @param standing how the piece's settings speak of it
 * @param reasons why it stands where it does, at least one sentence
 * @param next the first thing to try against it that this piece's machine can do, that was not
 *     tried yet and that no cause before it offers; null when there is none
 * @param passedOver why earlier remedies are not offered
 */
public record LikelyCause(
    Cause cause,
    Standing standing,
    List<Message> reasons,
    @Nullable NextTry next,
    List<Message> passedOver) {
  public LikelyCause {
    reasons = List.copyOf(reasons);
    passedOver = List.copyOf(passedOver);
  }
}
