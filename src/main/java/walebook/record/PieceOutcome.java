package walebook.record;

/** What the student makes of a piece. */
public enum PieceOutcome implements Keyed {
  /** Would use it on a garment. */
  KEEP("keep"),
  /** Sew again with one change. */
  CHANGE("change"),
  /** Something else went wrong: nothing to learn from the numbers. */
  SPOILED("spoiled");

  private final String key;

  PieceOutcome(String key) {
    this.key = key;
  }

  @Override
  public String key() {
    return key;
  }
}
