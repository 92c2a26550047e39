package walebook.garment;

/** Which of the cloth's two directions goes round the body. */
public enum GrainRound {
  /** The courses go round, the wales hang down: the usual lay. */
  COURSE("course", "garment.grain.course"),
  /** The wales go round. */
  WALE("wale", "garment.grain.wale");

  private final String key;
  private final String sayKey;

  GrainRound(String key, String sayKey) {
    this.key = key;
    this.sayKey = sayKey;
  }

  /** The word used in files and on the command line. */
  public String key() {
    return key;
  }

  /** The key of its name in the bundle. */
  public String sayKey() {
    return sayKey;
  }

  /** The direction that then runs along the body. */
  public GrainRound other() {
    return this == COURSE ? WALE : COURSE;
  }

  /** The direction of a word, {@code course} or {@code wale}. */
  public static GrainRound of(String key) {
    for (GrainRound grain : values()) {
      if (grain.key.equals(key)) {
        return grain;
      }
    }
    throw new IllegalArgumentException("grain must be course or wale: " + key);
  }
}
