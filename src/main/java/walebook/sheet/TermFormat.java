package walebook.sheet;

import java.nio.file.Path;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** The kinds of file that a term's record is written as. */
public enum TermFormat {
  /** Every sheet, for people. */
  WORKBOOK(".xlsx"),
  /** The table of pieces alone (RFC 4180). */
  CSV(".csv"),
  /** Every table as a CSV file of its own, in one zip. */
  TABLES(".zip"),
  /** Every table, for machines. */
  JSON(".json");

  private final String ending;

  TermFormat(String ending) {
    this.ending = ending;
  }

  public String ending() {
    return ending;
  }

  /** The kind that a file's ending says, or null. */
  public static @Nullable TermFormat find(String name) {
    for (TermFormat each : values()) {
      if (name.toLowerCase(Locale.ROOT).endsWith(each.ending)) {
        return each;
      }
    }
    return null;
  }

  /** The kind of a file; a workbook where the ending says nothing. */
  static TermFormat of(Path file) {
    TermFormat found = find(file.toString());
    return found == null ? WORKBOOK : found;
  }
}
