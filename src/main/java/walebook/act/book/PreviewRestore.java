package walebook.act.book;

import java.nio.file.Path;
import walebook.book.BookCare;
import walebook.book.BookDifference;
import walebook.problem.Answer;

/** Shows what going back to a backup would change, and changes nothing. */
public final class PreviewRestore {
  private final BookCare care;

  public PreviewRestore(BookCare care) {
    this.care = care;
  }

  public Answer<BookDifference> of(Path book, Path copy) {
    return care.difference(book, copy);
  }
}
