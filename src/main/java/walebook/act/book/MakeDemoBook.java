package walebook.act.book;

import java.nio.file.Path;
import java.time.Clock;
import walebook.act.demo.DemoClass;
import walebook.book.Book;
import walebook.book.BookFiles;
import walebook.problem.Answer;
import walebook.quantity.Unit;

/** Makes a book with an invented evening class in it, for trying things out; it says so. */
public final class MakeDemoBook {
  /** The name that the demo book carries. */
  public static final String NAME = "Evening class in the harbour hall (invented)";

  /** The usual file name of the demo book. */
  public static final String FILE = "harbour-hall.walebook";

  /** The seed of the class that everybody gets. */
  public static final long SEED = 20260914;

  private final BookFiles files;
  private final Clock clock;

  public MakeDemoBook(BookFiles files, Clock clock) {
    this.files = files;
    this.clock = clock;
  }

  /**
   * Makes the book and leaves it open.
   *
   * @param file must not exist; its folder must
   * @param seed the same seed makes the same class, keys aside
   */
  public Answer<Book> make(Path file, long seed) {
    return files
        .make(file, NAME, true, Unit.MM, clock)
        .map(
            book -> {
              DemoClass.fill(book, seed);
              book.history().beginHere();
              return book;
            });
  }

  /** Opens the demo book, or makes it where there is none yet. */
  public Answer<Book> openOrMake(Path file) {
    return java.nio.file.Files.exists(file) ? files.open(file, clock) : make(file, SEED);
  }
}
