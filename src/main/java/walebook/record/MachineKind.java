package walebook.record;

/** The three kinds of machine in a sewing room. */
public enum MachineKind implements Keyed {
  SEWING("sewing"),
  OVERLOCKER("overlocker"),
  COVERSTITCH("coverstitch");

  private final String key;

  MachineKind(String key) {
    this.key = key;
  }

  @Override
  public String key() {
    return key;
  }
}
