package walebook.record;

/** How a pull along a seam ended: two different outcomes, never one number. */
public enum SeamEnd implements Keyed {
  /** A thread broke or the seam opened: the length is a value. */
  GAVE("gave"),
  /** The cloth stopped first: the length is a lower bound. */
  HELD("held");

  private final String key;

  SeamEnd(String key) {
    this.key = key;
  }

  @Override
  public String key() {
    return key;
  }
}
