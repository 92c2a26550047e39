package walebook.act.bring;

import java.time.Clock;
import java.util.Random;
import walebook.act.bring.match.BringWhat;
import walebook.book.Book;
import walebook.problem.Answer;
import walebook.record.By;
import walebook.tables.SharedTables;
import walebook.words.Words;

/**
 * Brings test pieces in from a spreadsheet in one step: all or none, or those that are good, as the
 * plan says.
 */
public final class BringInPieces {
  private final BringIn bring;

  /**
   * Makes the act.
   *
   * @param chance draws codes for pieces without one
   */
  public BringInPieces(Book book, SharedTables tables, Words words, Clock clock, Random chance) {
    this.bring = new BringIn(book, tables, words, clock, chance);
  }

  /** What became of each row; the step is null where nothing was brought in. */
  public Answer<Trial> bring(BringPlan plan, By by) {
    if (plan.what() != BringWhat.PIECES) {
      throw new IllegalArgumentException("a plan for pieces is wanted, not for " + plan.what());
    }
    return bring.run(plan, /* dry= */ false, by);
  }
}
