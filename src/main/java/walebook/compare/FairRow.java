package walebook.compare;

import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.statistics.AdjustedMean;
import walebook.statistics.Counted;
import walebook.statistics.Interval;
import walebook.statistics.Proportion;
import walebook.statistics.Summary;

/**
 * One setting in a fair comparison.
 *
 * @param levels one for each factor of the comparison
 * @param values that are known; 1 and 0 for a rate
 * @param lowerBounds values of pieces that only held
 * @param students how many sewed it
 * @param dots every piece's value, the least first; none where the single pieces are not kept
 * @param raw of the values as they are; null for a rate, and where a piece only held: a bound is
 *     never averaged
 * @param adjusted freed from who sewed it; null as {@code raw}
 * @param lasting product-limit estimate; null unless the outcome is a seam's
 * @param held how many of those pulled held; null unless the outcome is a seam's or the rate
 */
public record FairRow(
    List<String> levels,
    Counted values,
    Counted lowerBounds,
    int students,
    List<Dot> dots,
    @Nullable Summary raw,
    @Nullable AdjustedMean adjusted,
    @Nullable Lasting lasting,
    @Nullable Proportion held) {
  public FairRow {
    levels = List.copyOf(levels);
    dots = List.copyOf(dots);
  }

  public int pieces() {
    return values.n() + lowerBounds.n();
  }

  /** How many pieces are only lower bounds. */
  public int bounds() {
    return lowerBounds.n();
  }

  /**
   * Where too many only held to say by when half gave: half of the pieces go at least so far, since
   * those that held go further than they were seen to; null where more is known.
   */
  public @Nullable Double atLeast() {
    boolean open = raw == null && lasting != null && lasting.median() == null && bounds() > 0;
    if (!open) {
      return null;
    }
    Counted all = new Counted();
    all.addAll(values);
    all.addAll(lowerBounds);
    return all.lowerMiddle();
  }

  /** Wilson's interval of the share that held, or null. */
  public @Nullable Interval heldInterval(double confidence) {
    return held == null ? null : held.wilson(confidence);
  }

  /** The middle of what is known: adjusted mean, median or share held in percent; null if none. */
  public @Nullable Double middle() {
    return middle(adjusted, lasting, held);
  }

  static @Nullable Double middle(
      @Nullable AdjustedMean adjusted, @Nullable Lasting lasting, @Nullable Proportion held) {
    if (adjusted != null) {
      return adjusted.mean();
    }
    if (lasting != null) {
      return lasting.median();
    }
    return held == null ? null : Double.valueOf(100 * held.share());
  }
}
