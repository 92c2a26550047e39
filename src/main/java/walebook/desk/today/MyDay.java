package walebook.desk.today;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A student's day: what is asked, what is done.
 *
 * @param next null when all of the plan is logged or there is none
 */
public record MyDay(
    List<PlanRow> plan, int done, @Nullable NextPiece next, List<RecentPiece> recent) {
  public MyDay {
    plan = List.copyOf(plan);
    recent = List.copyOf(recent);
  }
}
