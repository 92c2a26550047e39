package walebook.compare;

import java.util.Comparator;
import java.util.UUID;

/**
 * One piece's value in a comparison.
 *
 * @param who the student, by name or alias
 * @param value in the outcome's unit; 1 or 0 for a rate
 * @param atLeast true when the piece held: the value is only a lower bound
 */
public record Dot(
    UUID pieceId, String code, UUID studentId, String who, double value, boolean atLeast) {
  /** The least first, those of one value by their codes. */
  static final Comparator<Dot> BY_VALUE =
      Comparator.comparingDouble(Dot::value).thenComparing(Dot::code);
}
