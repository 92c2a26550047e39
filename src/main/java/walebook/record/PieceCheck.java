package walebook.record;

import java.time.LocalDate;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A piece looked over by its student or by the tutor.
 *
 * @param marks 0 to 3 each; those not looked at are left out
 * @param help null while nobody said
 */
public record PieceCheck(
    UUID id,
    UUID pieceId,
    CheckedBy by,
    Map<Marking, Integer> marks,
    @Nullable Help help,
    LocalDate checkedOn,
    Stamp stamp) {
  public PieceCheck {
    Objects.requireNonNull(by, "by");
    Objects.requireNonNull(checkedOn, "checkedOn");
    marks = Map.copyOf(marks);
    marks.forEach((marking, mark) -> Check.within(marking.key(), mark, 0, Marking.MOST));
  }

  /** The mark, or null. */
  public @Nullable Integer mark(Marking marking) {
    return marks.get(marking);
  }

  /** True when all of these were looked at and none is below the pass. */
  public boolean passes(Set<Marking> looksAt) {
    return marks.keySet().containsAll(looksAt) && !isBelow(looksAt);
  }

  /** True when one of these is below the pass. */
  public boolean isBelow(Set<Marking> looksAt) {
    return marks.entrySet().stream()
        .anyMatch(each -> looksAt.contains(each.getKey()) && each.getValue() < Marking.PASS);
  }

  /** True when record and reasoning pass, whatever became of the piece. */
  public boolean reasoningPasses() {
    Integer mark = mark(Marking.REASONING);
    return mark != null && mark >= Marking.PASS;
  }
}
