package walebook.record;

import java.time.LocalDate;
import java.util.UUID;

/**
 * What the tutor said of a piece on a day.
 *
 * @param madeBy who said it; empty when nobody is named
 */
public record Feedback(
    UUID id, UUID pieceId, LocalDate givenOn, String says, String madeBy, Stamp stamp) {
  public Feedback {
    Check.text("says", says);
  }
}
