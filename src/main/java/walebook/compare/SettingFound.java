package walebook.compare;

import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.statistics.FiveNumbers;
import walebook.statistics.Interval;
import walebook.statistics.Proportion;

/**
 * One combination of levels with what was found of it. Gave and held are kept apart: a held piece
 * counts as a lower bound and never goes into a median.
 */
public interface SettingFound {
  /** A fault of this severity is seen at arm's length. */
  int SEEN_AT_ARMS_LENGTH = 2;

  /** One for each factor of the comparison, in its order. */
  List<String> levels();

  int pieces();

  /** How many different students sewed it. */
  int students();

  int gave();

  int held();

  /** How many show a fault that is seen at arm's length. */
  int withFault();

  /** Seam stretch in percent of those that gave, or null when none did. */
  @Nullable FiveNumbers stretchOfGave();

  /** Seam share in percent of those that gave, or null. */
  @Nullable FiveNumbers shareOfGave();

  /** Edge change in percent of all that were measured, or null. */
  @Nullable FiveNumbers edgeChange();

  /** Appearance grade of all that were graded, or null. */
  @Nullable FiveNumbers grade();

  /** The share of pulled pieces that held, as count and n, or null when none was pulled. */
  default @Nullable Proportion heldShare() {
    int pulled = gave() + held();
    return pulled == 0 ? null : new Proportion(held(), pulled);
  }

  /** Wilson's 95 % interval of the share that held, as fractions, or null. */
  default @Nullable Interval heldInterval() {
    Proportion share = heldShare();
    return share == null ? null : share.wilson(0.95);
  }
}
