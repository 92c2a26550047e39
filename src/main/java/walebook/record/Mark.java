package walebook.record;

/** What the tutor made of an odd value. */
public enum Mark implements Keyed {
  /** Looked at and right. */
  KEPT("kept"),
  /** Written down wrong and put right. */
  MISTYPED("mistyped"),
  /** Left out of every comparison, for a reason that stands beside it. */
  SET_ASIDE("set-aside");

  private final String key;

  Mark(String key) {
    this.key = key;
  }

  @Override
  public String key() {
    return key;
  }
}
