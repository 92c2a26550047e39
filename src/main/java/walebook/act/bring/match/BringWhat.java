package walebook.act.bring.match;

import walebook.record.Keyed;

/** What is brought in from a spreadsheet. */
public enum BringWhat implements Keyed {
  ROSTER("roster"),
  CLOTHS("cloths"),
  PIECES("pieces"),
  READINGS("readings"),
  WASHES("washes"),
  NOTES("notes");

  private final String key;

  BringWhat(String key) {
    this.key = key;
  }

  /** What stands beside the pieces: each row read by the form that it is usually typed in. */
  public boolean isLog() {
    return this == CLOTHS || this == READINGS || this == WASHES || this == NOTES;
  }

  @Override
  public String key() {
    return key;
  }
}
