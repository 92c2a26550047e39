package walebook.desk.today;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A student's day: what is asked, what is done.
 *
 * @param next null when all of the plan is logged or there is none
 * @param readings what is to be measured
 */
public record MyDay(
    List<PlanRow> plan,
    int done,
    @Nullable NextPiece next,
    List<RecentPiece> recent,
    MyReadings readings) {
  public MyDay {
    plan = List.copyOf(plan);
    recent = List.copyOf(recent);
  }

  /** Whether the next thing to do is a reading: before a piece where the lesson in hand asks it. */
  public boolean isReadingNext() {
    MyReadings.Next reading = readings.next();
    return reading != null && (next == null || reading.inHand());
  }

  /** Whether there is nothing but readings to do. */
  public boolean isMeasuredOnly() {
    return plan.isEmpty() && !readings.lines().isEmpty();
  }
}
