package walebook.record;

/** When a fault was seen. */
public enum FaultWhen implements Keyed {
  /** Off the machine. */
  SEWN("sewn"),
  PRESSED("pressed"),
  STRETCHED("stretched"),
  WASHED("washed");

  private final String key;

  FaultWhen(String key) {
    this.key = key;
  }

  @Override
  public String key() {
    return key;
  }
}
