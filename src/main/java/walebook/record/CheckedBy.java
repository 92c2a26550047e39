package walebook.record;

/** Who looked a piece over. */
public enum CheckedBy implements Keyed {
  SELF("self"),
  TUTOR("tutor");

  private final String key;

  CheckedBy(String key) {
    this.key = key;
  }

  @Override
  public String key() {
    return key;
  }
}
