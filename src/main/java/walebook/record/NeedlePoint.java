package walebook.record;

/** The point of a needle. */
public enum NeedlePoint implements Keyed {
  UNIVERSAL("universal"),
  /** Rounded, pushes loops aside. */
  JERSEY("jersey"),
  /** Rounded, with a scarf that holds the loop for the hook. */
  STRETCH("stretch"),
  SHARP("sharp"),
  TWIN_STRETCH("twin-stretch");

  private final String key;

  NeedlePoint(String key) {
    this.key = key;
  }

  @Override
  public String key() {
    return key;
  }
}
