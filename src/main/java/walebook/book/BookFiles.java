package walebook.book;

import java.nio.file.Path;
import java.time.Clock;
import java.util.UUID;
import walebook.book.gather.SourceBook;
import walebook.problem.Answer;
import walebook.quantity.Unit;

/** Makes and opens books. */
public interface BookFiles {
  /**
   * Makes a new, empty book and opens it.
   *
   * @return refused when the file exists, or its folder is missing or not writable
   */
  Answer<Book> make(Path file, String name, boolean invented, Unit lengthUnit, Clock clock);

  /**
   * Opens a book: checks it, backs it up, brings it to the present shape, checks again.
   *
   * @return refused with the reason when the file is no book, is from a newer Walebook, is damaged,
   *     is open elsewhere, or can't be written
   */
  Answer<Book> open(Path file, Clock clock);

  /**
   * Makes a book ready to be gathered from without writing to it or beside it; one that needs more
   * than reading is copied into the scratch folder first.
   *
   * @param scratch an empty folder for this book alone
   * @return refused with the reason when the file is no book, is from a newer Walebook, is damaged,
   *     or is open
   */
  Answer<SourceBook> borrow(Path file, Path scratch);

  /**
   * Writes a small book for one student of a class, with the class, cloths, machines, lessons and
   * the student's own plan; of others it has no name.
   *
   * @param from the tutor's book, which may be open
   * @param file where to; one that is there is replaced: ask before
   */
  void starter(Path from, Path file, String name, UUID classId, UUID studentId, Clock clock);

  /** Copies an open book before others are gathered into it; the copy is kept like the rest. */
  Path backUpBeforeGathering(Path book, Clock clock);
}
