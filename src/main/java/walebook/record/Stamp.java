package walebook.record;

import java.time.Instant;

/**
 * When a row was made, when last changed, and how often.
 *
 * @param version 1 for a new row; a save with an older version than the book's is refused
 */
public record Stamp(Instant created, Instant changed, long version) {
  public Stamp {
    Check.within("version", version, 1, Long.MAX_VALUE);
  }

  /** The stamp of a row made now. */
  public static Stamp fresh(Instant now) {
    return new Stamp(now, now, 1);
  }

  /** The stamp after one more change. */
  public Stamp next(Instant now) {
    return new Stamp(created, now, version + 1);
  }
}
