package walebook.book;

import java.nio.file.Path;
import java.util.List;

/**
 * What came out of a damaged book.
 *
 * @param into the new book
 * @param tables every table of which anything came out or is known to be lost
 * @param badPages pages of the file that could not be read
 * @param lostPieces codes of pieces that an index still names, though their rows are gone
 * @param standIns rows made anew, because rows that came out lean on them
 */
public record RescueReport(
    Path into, List<Table> tables, int badPages, List<String> lostPieces, int standIns) {
  public RescueReport {
    tables = List.copyOf(tables);
    lostPieces = List.copyOf(lostPieces);
  }

  /**
   * One table's rows.
   *
   * @param out how many stand in the new book
   * @param lost how many are known not to; more may be gone without a trace
   */
  public record Table(String name, long out, long lost) {}

  public long out() {
    return tables.stream().mapToLong(Table::out).sum();
  }

  public long lost() {
    return tables.stream().mapToLong(Table::lost).sum();
  }
}
