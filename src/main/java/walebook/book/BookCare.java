package walebook.book;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.problem.Answer;

/**
 * Looks after the files of books: copies, going back to one, rescue. Every method may wait for the
 * disk, and none throws for what a file is or a disk does.
 */
public interface BookCare {
  /** The copies of a book, newest first. */
  Answer<List<BookCopy>> copies(Path book);

  /**
   * Makes a copy and checks it, then lets go those that age has thinned out. The book may be open,
   * also by this program: saving goes on meanwhile.
   *
   * @param beside a second folder that the copy also goes to, such as one on a stick; may be null
   */
  Answer<BookCopy> backUp(Path book, BookCopy.Why why, @Nullable Path beside, Clock clock);

  /** How many test pieces a copy holds; refused when it can't be read. */
  Answer<Long> pieces(Path copy);

  /** True when the book was written to since its newest copy. */
  boolean changedSinceCopy(Path book);

  /** What going back to a copy would change; changes nothing. */
  Answer<BookDifference> difference(Path book, Path copy);

  /**
   * Makes a copy's state the book's, whole or not at all. The present state is copied first; a
   * damaged book is kept beside as it is.
   *
   * @param book must not be open
   * @return where the state from before is kept
   */
  Answer<Path> restore(Path book, Path copy, Clock clock);

  /**
   * Reads what can be read of a damaged book into a new one; the damaged one is not touched.
   *
   * @param into must not exist
   */
  Answer<RescueReport> rescue(Path damaged, Path into, RescueNames names, Clock clock);
}
