package walebook.act.gather;

import java.util.List;
import java.util.UUID;
import walebook.book.Book;
import walebook.book.gather.Choice;
import walebook.book.gather.Conflict;
import walebook.problem.Answer;
import walebook.record.By;

/** Shows what a gathering left to a person, and does as the person says. */
public final class DecideConflicts {
  private final Book book;

  public DecideConflicts(Book book) {
    this.book = book;
  }

  /** What waits, oldest first. */
  public List<Conflict> open() {
    return book.gathering().conflicts();
  }

  /** Decides one; what gave way stays in the history. */
  public Answer<Conflict> decide(UUID conflictId, Choice choice, By by) {
    return book.gathering().decide(conflictId, choice, by);
  }
}
