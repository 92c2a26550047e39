package walebook.record;

/** Whether cloth was measured along a fold or in a single layer. */
public enum Fold implements Keyed {
  FOLDED("folded"),
  SINGLE("single");

  private final String key;

  Fold(String key) {
    this.key = key;
  }

  @Override
  public String key() {
    return key;
  }
}
