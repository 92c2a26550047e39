package walebook.act.bring;

import java.time.Clock;
import java.util.Random;
import walebook.book.Book;
import walebook.problem.Answer;
import walebook.record.By;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** Brings readings, washes or notes in from a spreadsheet in one step, as the plan says. */
public final class BringInLog {
  private final BringIn bring;

  public BringInLog(Book book, SharedTables tables, Words words, Clock clock, Random chance) {
    this.bring = new BringIn(book, tables, words, clock, chance);
  }

  /** What became of each row; the step is null where nothing was brought in. */
  public Answer<Trial> bring(BringPlan plan, By by) {
    if (!plan.what().isLog()) {
      throw new IllegalArgumentException("a plan for a log is wanted, not for " + plan.what());
    }
    return bring.run(plan, /* dry= */ false, by);
  }
}
