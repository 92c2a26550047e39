package walebook.record;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * How many records a class has that an assessor may count.
 *
 * @param lastChange of any of them; null when there are none
 */
public record RecordTally(int pieces, int checks, int comments, @Nullable Instant lastChange) {
  /** No records. */
  public static final RecordTally NONE = new RecordTally(0, 0, 0, null);

  /** All of them together. */
  public int records() {
    return pieces + checks + comments;
  }
}
