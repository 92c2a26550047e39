package walebook.record;

/** A setting in words, since dial numbers mean nothing from one machine to the next. */
public enum Step implements Keyed {
  LOWER("lower"),
  NORMAL("normal"),
  HIGHER("higher");

  private final String key;

  Step(String key) {
    this.key = key;
  }

  @Override
  public String key() {
    return key;
  }
}
