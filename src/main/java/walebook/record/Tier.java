package walebook.record;

/** How much of a plan a student takes on. */
public enum Tier implements Keyed {
  CORE("core"),
  STANDARD("standard"),
  /** The standard plan and a comparison of one's own. */
  OWN("own");

  private final String key;

  Tier(String key) {
    this.key = key;
  }

  @Override
  public String key() {
    return key;
  }
}
