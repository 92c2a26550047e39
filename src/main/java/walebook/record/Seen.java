package walebook.record;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What was seen on a piece.
 *
 * @param grade appearance, 1 worst to 5 best
 */
public record Seen(
    @Nullable Integer grade,
    @Nullable PieceOutcome outcome,
    List<FaultSeen> faults,
    String remark) {
  public static final Seen NOTHING = new Seen(null, null, List.of(), "");

  public Seen {
    Check.within("grade", grade, 1, 5);
    faults = List.copyOf(faults);
  }
}
