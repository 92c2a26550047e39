package walebook.act.bring.match;

import walebook.record.Keyed;

/** Which comes first where a day is written as 3/4/2026. */
public enum DayOrder implements Keyed {
  UNKNOWN("unknown"),
  DAY_FIRST("day-first"),
  MONTH_FIRST("month-first");

  private final String key;

  DayOrder(String key) {
    this.key = key;
  }

  @Override
  public String key() {
    return key;
  }
}
