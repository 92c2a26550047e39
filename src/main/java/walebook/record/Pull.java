package walebook.record;

/** How hard it was pulled. */
public enum Pull implements Keyed {
  /** By hand, until it begins to resist. */
  COMFORTABLE("comfortable"),
  /** By hand, until it stops. */
  FIRM("firm"),
  /** By a hung weight. */
  LOAD("load");

  private final String key;

  Pull(String key) {
    this.key = key;
  }

  @Override
  public String key() {
    return key;
  }
}
