package walebook.compare.alike;

import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.statistics.Robust;

/**
 * Which readings of a study lie far from the others: beyond 3.5 robust standard deviations from the
 * middle of at least five (B. Iglewicz and D. C. Hoaglin, How to Detect and Handle Outliers, 1993),
 * and by more than reading alone can make.
 *
 * @param robust middle and spread of all readings; null where they are too few
 */
public record FarOff(@Nullable Robust robust) {
  /** A stretch is read to about a point; points. */
  public static final double READING_ALONE = 3.5;

  private static final int FEWEST = 5;

  /** Of all readings of a study, percent. */
  public static FarOff of(List<Double> stretches) {
    return new FarOff(stretches.size() < FEWEST ? null : Robust.of(stretches));
  }

  /** True for a value that would be no odd one among these; false where they are too few. */
  public boolean isAmong(double stretch) {
    return robust != null && !isFar(stretch);
  }

  /** True for a value that is odd among these; false where they are too few. */
  public boolean isFar(double stretch) {
    return robust != null
        && robust.isOdd(stretch)
        && Math.abs(stretch - robust.median()) > READING_ALONE;
  }
}
