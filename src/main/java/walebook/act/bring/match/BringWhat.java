package walebook.act.bring.match;

import walebook.record.Keyed;

/** What is brought in from a spreadsheet. */
public enum BringWhat implements Keyed {
  ROSTER("roster"),
  PIECES("pieces");

  private final String key;

  BringWhat(String key) {
    this.key = key;
  }

  @Override
  public String key() {
    return key;
  }
}
