package walebook.desk.today;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A line of my plan.
 *
 * @param plannedId the planned piece
 * @param loggedId what was sewn for it, or null
 * @param code as spoken
 * @param asks cloth and settings in words
 * @param result what became of it; before, of which other lesson it is, where it is of one
 */
public record PlanRow(
    UUID plannedId, @Nullable UUID loggedId, int number, String code, String asks, String result) {
  public boolean isDone() {
    return loggedId != null;
  }
}
