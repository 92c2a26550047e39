package walebook.record;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A lesson of a class, taught from a pack. */
public record Lesson(
    UUID id, UUID classId, UUID packId, String title, LocalDate taughtOn, Stamp stamp) {
  public Lesson {
    Check.text("title", title);
  }

  /**
   * The lesson that a class is at: the last that has begun, else the first to come.
   *
   * @param byDay the lessons of the class, earliest first
   * @return null when there is none
   */
  public static @Nullable Lesson inHand(List<Lesson> byDay, LocalDate today) {
    return byDay.stream()
        .filter(each -> !each.taughtOn().isAfter(today))
        .reduce((one, later) -> later)
        .orElse(byDay.isEmpty() ? null : byDay.get(0));
  }
}
