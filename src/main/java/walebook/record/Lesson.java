package walebook.record;

import java.time.LocalDate;
import java.util.UUID;

/** A lesson of a class, taught from a pack. */
public record Lesson(
    UUID id, UUID classId, UUID packId, String title, LocalDate taughtOn, Stamp stamp) {
  public Lesson {
    Check.text("title", title);
  }
}
