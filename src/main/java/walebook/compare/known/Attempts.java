package walebook.compare.known;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/**
 * A chain of tries at one thing.
 *
 * @param pieces from the first try to the last
 * @param classId where it began
 * @param began when the first was sewn
 * @param untilGood how many pieces it took until one was good; how many there were where none was
 * @param good true when one was good
 */
public record Attempts(
    List<UUID> pieces, UUID classId, LocalDate began, int untilGood, boolean good) {
  public Attempts {
    pieces = List.copyOf(pieces);
  }

  public boolean firstTimeRight() {
    return good && untilGood == 1;
  }
}
