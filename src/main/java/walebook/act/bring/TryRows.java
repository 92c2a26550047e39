package walebook.act.bring;

import java.time.Clock;
import java.util.Random;
import walebook.book.Book;
import walebook.problem.Answer;
import walebook.record.By;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** Shows what would become of each row of a spreadsheet; nothing of it stays in the book. */
public final class TryRows {
  private final BringIn bring;

  public TryRows(Book book, SharedTables tables, Words words, Clock clock, Random chance) {
    this.bring = new BringIn(book, tables, words, clock, chance);
  }

  /** Every row's fate, or why no row can be read. */
  public Answer<Trial> of(BringPlan plan) {
    return bring.run(plan, /* dry= */ true, By.NOBODY);
  }
}
