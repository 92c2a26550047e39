package walebook.garment;

/**
 * How long a close garment is worn: a share of stretch that is right for an hour tires in a day.
 */
public enum Wear {
  DAY("day"),
  SPORT("sport");

  private final String key;

  Wear(String key) {
    this.key = key;
  }

  /** The word used in tables and on the command line. */
  public String key() {
    return key;
  }

  /** The wear of a word, {@code day} or {@code sport}. */
  public static Wear of(String key) {
    for (Wear wear : values()) {
      if (wear.key.equals(key)) {
        return wear;
      }
    }
    throw new IllegalArgumentException("wear must be day or sport: " + key);
  }
}
