package walebook.desk.classroom;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import walebook.book.Book;
import walebook.book.BookFiles;
import walebook.problem.Answer;
import walebook.problem.Problem;

/**
 * Books opened to be asked along with the one in hand.
 *
 * @param troubles why some could not be opened
 */
record OtherBooks(List<Book> books, List<Problem> troubles) implements AutoCloseable {
  OtherBooks {
    books = List.copyOf(books);
    troubles = List.copyOf(troubles);
  }

  /** Opens all that can be opened. */
  static OtherBooks open(BookFiles files, List<Path> paths, Clock clock) {
    List<Book> books = new ArrayList<>();
    List<Problem> troubles = new ArrayList<>();
    for (Path path : paths) {
      Answer<Book> answer = files.open(path, clock);
      if (answer.isGood()) {
        books.add(answer.value());
      } else {
        troubles.addAll(answer.problems());
      }
    }
    return new OtherBooks(books, troubles);
  }

  @Override
  public void close() {
    books.forEach(Book::close);
  }
}
