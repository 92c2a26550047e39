package walebook.act.bring.match;

import walebook.record.Keyed;

/** What is brought in from a spreadsheet. */
public enum BringWhat implements Keyed {
  ROSTER("roster"),
  PIECES("pieces"),
  READINGS("readings"),
  WASHES("washes"),
  NOTES("notes");

  private final String key;

  BringWhat(String key) {
    this.key = key;
  }

  /**
   * What the log beside the pieces is made of: each row by the form that it is usually typed in.
   */
  public boolean isLog() {
    return this == READINGS || this == WASHES || this == NOTES;
  }

  @Override
  public String key() {
    return key;
  }
}
