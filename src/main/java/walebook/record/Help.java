package walebook.record;

/** How much help a piece had. */
public enum Help implements Keyed {
  NONE("none"),
  PROMPTED("prompted"),
  HANDS_ON("hands-on");

  private final String key;

  Help(String key) {
    this.key = key;
  }

  @Override
  public String key() {
    return key;
  }
}
