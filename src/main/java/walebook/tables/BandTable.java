package walebook.tables;

import java.util.List;
import walebook.working.Band;

/** Tables of bands that have a name and advice and nothing else. */
final class BandTable {
  private BandTable() {}

  /** Makes a row. */
  interface Row<T extends Band> {
    T of(String key, double from, double below, String name, String advice, String source);
  }

  static <T extends Band> CsvTable<T> of(String file, Row<T> row) {
    return new CsvTable<>(
        file,
        List.of("key", "from", "below", "name", "advice", "source"),
        read ->
            row.of(
                read.text("key"),
                read.number("from"),
                read.number("below"),
                read.text("name"),
                read.text("advice"),
                read.text("source")));
  }
}
