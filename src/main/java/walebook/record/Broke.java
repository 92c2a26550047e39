package walebook.record;

/** What went first when a seam gave. */
public enum Broke implements Keyed {
  NEEDLE_THREAD("needle-thread"),
  /** Bobbin or looper thread. */
  UNDER_THREAD("under-thread"),
  CLOTH("cloth"),
  /** It opened without breaking. */
  GRIN("grin");

  private final String key;

  Broke(String key) {
    this.key = key;
  }

  @Override
  public String key() {
    return key;
  }
}
