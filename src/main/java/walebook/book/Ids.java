package walebook.book;

import com.github.f4b6a3.uuid.UuidCreator;
import java.util.UUID;

/** New keys: UUIDv7 (RFC 9562), so that rows of many books can stand in one and sort by time. */
public final class Ids {
  private Ids() {}

  public static UUID next() {
    return UuidCreator.getTimeOrderedEpoch();
  }
}
