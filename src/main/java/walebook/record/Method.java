package walebook.record;

/** What a test piece tries out. */
public enum Method implements Keyed {
  SEAM("seam"),
  HEM("hem"),
  BAND("band"),
  /** An edge finished by itself. */
  EDGE("edge");

  private final String key;

  Method(String key) {
    this.key = key;
  }

  @Override
  public String key() {
    return key;
  }
}
