package walebook.record;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What a price is for.
 *
 * @param clothId a cloth of the room; null for anything else
 * @param what what else it is, as a pack names it; empty for a cloth
 * @param metre true for a metre of it, false for one of it
 */
public record Priced(@Nullable UUID clothId, String what, boolean metre) {
  public Priced {
    if ((clothId == null) == what.isBlank()) {
      throw new IllegalArgumentException("a price is for a cloth or for something with a name");
    }
    if (clothId != null && !metre) {
      throw new IllegalArgumentException("cloth is bought by the metre");
    }
  }

  public static Priced metreOf(UUID clothId) {
    return new Priced(clothId, "", true);
  }

  public static Priced of(String what, boolean metre) {
    return new Priced(null, what.strip(), metre);
  }
}
