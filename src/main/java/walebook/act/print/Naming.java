package walebook.act.print;

import walebook.record.Keyed;

/** How students are called on paper. */
public enum Naming implements Keyed {
  NAME("name"),
  INITIALS("initials"),
  /** The code that stands for the name on a projector. */
  CODE("code");

  private final String key;

  Naming(String key) {
    this.key = key;
  }

  @Override
  public String key() {
    return key;
  }
}
