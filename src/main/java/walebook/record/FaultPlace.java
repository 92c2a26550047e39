package walebook.record;

/** Where on a piece a fault sits. */
public enum FaultPlace implements Keyed {
  START("start"),
  CROSSING("crossing"),
  CURVE("curve"),
  END("end"),
  ALL_ALONG("all-along");

  private final String key;

  FaultPlace(String key) {
    this.key = key;
  }

  @Override
  public String key() {
    return key;
  }
}
