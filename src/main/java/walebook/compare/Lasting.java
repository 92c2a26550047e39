package walebook.compare;

import org.jspecify.annotations.Nullable;
import walebook.statistics.Counted;
import walebook.statistics.ProductLimit;

/**
 * How far seams of one setting last where some only held to a value.
 *
 * @param n pieces
 * @param gave of these, how many gave; the rest are lower bounds
 * @param median by the product-limit estimate; null when less than half gave in reach
 * @param low the median is not below this; null when that can't be told
 * @param high the median is not above this; null when that can't be told
 * @param leastGave the shortest at which one gave; null when none did
 * @param mostHeld the furthest to which one held; null when none did
 * @param confidence of {@code low} and {@code high}
 */
public record Lasting(
    int n,
    int gave,
    @Nullable Double median,
    @Nullable Double low,
    @Nullable Double high,
    @Nullable Double leastGave,
    @Nullable Double mostHeld,
    double confidence) {

  /**
   * Of counted values.
   *
   * @param gave at which they gave
   * @param held to which the others held; of both together at least one
   */
  static Lasting of(Counted gave, Counted held, double confidence) {
    ProductLimit limit = ProductLimit.of(gave, held, confidence);
    ProductLimit.Limits limits = limit.quantileLimits(0.5);
    int n = gave.n() + held.n();
    boolean enough = n >= fewest(confidence);
    return new Lasting(
        n,
        limit.ended(),
        limit.median(),
        enough ? limits.low() : null,
        enough ? limits.high() : null,
        gave.least(),
        held.greatest(),
        confidence);
  }

  /**
   * With fewer pieces all of them may lie on one side of the true median by luck alone: {@code 2 ·
   * 0.5^n} must not pass what may go wrong. The estimate's own limits are for many pieces.
   */
  private static int fewest(double confidence) {
    return (int) Math.ceil(Math.log(2 / (1 - confidence)) / Math.log(2));
  }
}
