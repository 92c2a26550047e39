package walebook.record;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A cloth that a student is asked to measure along one grain.
 *
 * @param place its place in the student's order, from 1
 * @param control what everybody in the class measures
 * @param dropped taken back by a new plan
 * @param slot the plan's name for the cloth, such as {@code a}
 * @param clothId null until the tutor has said which cloth of the room stands for the plan's
 * @param repeats how often it is to be measured, 1 to 10
 */
public record PlannedReading(
    UUID id,
    UUID lessonId,
    UUID studentId,
    int place,
    boolean control,
    boolean dropped,
    String slot,
    @Nullable UUID clothId,
    Grain grain,
    int repeats,
    Stamp stamp) {
  public PlannedReading {
    Check.within("place", place, 1, 10_000);
    Check.within("repeats", repeats, 1, 10);
    if (slot.isEmpty()) {
      throw new IllegalArgumentException("slot must not be empty");
    }
  }

  /** The same as a new plan took it back. */
  public PlannedReading takenBack(Instant now) {
    return new PlannedReading(
        id,
        lessonId,
        studentId,
        place,
        control,
        true,
        slot,
        clothId,
        grain,
        repeats,
        stamp.next(now));
  }
}
