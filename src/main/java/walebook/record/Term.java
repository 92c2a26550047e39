package walebook.record;

import java.time.LocalDate;
import java.util.UUID;

/** A term, from its first day to its last. */
public record Term(UUID id, String name, LocalDate startsOn, LocalDate endsOn, Stamp stamp) {
  public Term {
    Check.text("name", name);
    if (endsOn.isBefore(startsOn)) {
      throw new IllegalArgumentException("endsOn must not be before startsOn: " + endsOn);
    }
  }
}
