package walebook.act.book;

import java.nio.file.Path;
import java.time.Clock;
import org.jspecify.annotations.Nullable;
import walebook.book.BookCare;
import walebook.book.BookCopy;
import walebook.problem.Answer;

/**
 * Makes a backup of a book, open or not: when somebody asks for it, on a schedule, and before
 * anything that changes much of a book at once.
 */
public final class BackUpBook {
  private final BookCare care;
  private final Clock clock;

  public BackUpBook(BookCare care, Clock clock) {
    this.care = care;
    this.clock = clock;
  }

  /**
   * Makes one.
   *
   * @param beside a second folder that it also goes to; may be null
   */
  public Answer<BookCopy> now(Path book, BookCopy.Why why, @Nullable Path beside) {
    return care.backUp(book, why, beside, clock);
  }

  /** True when the book was written to since its newest backup. */
  public boolean isDue(Path book) {
    return care.changedSinceCopy(book);
  }
}
