package walebook.act.book;

import java.nio.file.Path;
import walebook.book.Book;
import walebook.book.BookBytes;
import walebook.book.Classroom;
import walebook.book.open.SqliteFiles;

/**
 * The demo book for tests, made once for all that a runner runs; each gets a copy of its own and
 * may change it.
 */
public final class DemoBook {
  private static final BookBytes MADE =
      BookBytes.of(
          file ->
              new MakeDemoBook(new SqliteFiles(), Classroom.CLOCK)
                  .make(file, MakeDemoBook.SEED)
                  .value()
                  .close());

  private DemoBook() {}

  /** Puts a copy there, closed. */
  public static Path copyTo(Path file) {
    return MADE.copyTo(file);
  }

  /** Puts a copy there and opens it. */
  public static Book open(Path file) {
    return new SqliteFiles().open(copyTo(file), Classroom.CLOCK).value();
  }
}
