package walebook.garment;

import walebook.tables.SharedTables;

/** The rows that come with the program, for tests. */
final class Rows {
  static final GarmentRows ROWS = SharedTables.read().garment();

  private Rows() {}

  static GarmentKind kind(String key) {
    return ROWS.kinds().stream().filter(kind -> kind.key().equals(key)).findFirst().orElseThrow();
  }
}
