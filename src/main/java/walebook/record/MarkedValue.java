package walebook.record;

/** Which value a mark stands on. */
public enum MarkedValue implements Keyed {
  /** How far a seam stretched, and whether it gave or held. */
  SEAM_STRETCH("seam-stretch"),
  /** The change of a sewn edge's length. */
  EDGE_CHANGE("edge-change"),
  /** A piece's look. */
  GRADE("grade"),
  /** A reading of a cloth's stretch. */
  CLOTH_STRETCH("cloth-stretch");

  private final String key;

  MarkedValue(String key) {
    this.key = key;
  }

  @Override
  public String key() {
    return key;
  }

  /** True when it is a reading of a cloth rather than of a test piece. */
  public boolean isOfCloth() {
    return this == CLOTH_STRETCH;
  }
}
