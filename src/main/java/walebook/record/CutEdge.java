package walebook.record;

/** Where on the cloth a reading was taken. */
public enum CutEdge implements Keyed {
  /** Away from any edge. */
  INSIDE("inside"),
  CUT("cut"),
  SELVEDGE("selvedge");

  private final String key;

  CutEdge(String key) {
    this.key = key;
  }

  @Override
  public String key() {
    return key;
  }
}
