package walebook.act.bring;

import java.nio.file.Path;
import java.util.UUID;
import walebook.act.bring.match.BringWhat;
import walebook.act.bring.match.DayOrder;
import walebook.book.Book;
import walebook.words.Words;

/** A file as it is brought in when its columns are left as they are guessed. */
final class GuessedPlan {
  private GuessedPlan() {}

  /**
   * Reads the sheet that is usual for what is brought in.
   *
   * @param goodRows true to bring in the good rows although others are refused
   * @param sure true to bring in what is unlikely, unasked
   */
  static BringPlan of(
      Book book, UUID classId, Path file, BringWhat what, boolean goodRows, boolean sure) {
    ReadSpreadsheet read = new ReadSpreadsheet(book, Words.english());
    SpreadsheetFile opened = read.open(file, what).value();
    Spreadsheet sheet = read.read(opened, opened.usual(), what).value();
    return new BringPlan(
        what, sheet, read.guess(sheet, what), classId, null, DayOrder.UNKNOWN, goodRows, sure);
  }
}
