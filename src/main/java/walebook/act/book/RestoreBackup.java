package walebook.act.book;

import java.nio.file.Path;
import java.time.Clock;
import walebook.book.BookCare;
import walebook.problem.Answer;

/** Goes back to a backup; the state from before is kept. */
public final class RestoreBackup {
  private final BookCare care;
  private final Clock clock;

  public RestoreBackup(BookCare care, Clock clock) {
    this.care = care;
    this.clock = clock;
  }

  /**
   * Goes back.
   *
   * @param book must not be open
   * @return where the state from before is kept
   */
  public Answer<Path> to(Path book, Path copy) {
    return care.restore(book, copy, clock);
  }
}
