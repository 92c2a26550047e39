package walebook.record;

import java.util.UUID;

/**
 * Longer words about one thing.
 *
 * @param about which kind of thing
 * @param aboutId its key
 */
public record Note(UUID id, About about, UUID aboutId, String author, String body, Stamp stamp) {

  /** What a note can be about. */
  public enum About {
    PIECE,
    CLOTH,
    LESSON,
    STUDENT
  }

  public Note {
    Check.text("body", body);
  }
}
