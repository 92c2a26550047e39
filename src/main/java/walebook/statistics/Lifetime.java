package walebook.statistics;

/**
 * How far something went: to its end, or until watching stopped.
 *
 * @param value finite
 * @param ended true when the end was seen at {@code value}; false when it only held to there, so
 *     that its end lies beyond (right-censored)
 */
public record Lifetime(double value, boolean ended) {

  public Lifetime {
    Require.finite("value", value);
  }

  /** An end seen at {@code value}. */
  public static Lifetime endedAt(double value) {
    return new Lifetime(value, true);
  }

  /** No end up to {@code value}. */
  public static Lifetime heldTo(double value) {
    return new Lifetime(value, false);
  }
}
