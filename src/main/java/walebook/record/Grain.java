package walebook.record;

/** Which way a seam, an edge or a pull runs on the cloth. */
public enum Grain implements Keyed {
  /** Along the columns of loops, parallel to the selvedge. */
  WALE("wale"),
  /** Across the width. */
  COURSE("course"),
  /** Between the two. */
  BIAS("bias");

  private final String key;

  Grain(String key) {
    this.key = key;
  }

  @Override
  public String key() {
    return key;
  }
}
