package walebook.record;

/** What a dial of a machine sets. */
public enum Dial implements Keyed {
  LENGTH("length"),
  WIDTH("width");

  private final String key;

  Dial(String key) {
    this.key = key;
  }

  @Override
  public String key() {
    return key;
  }
}
