package walebook.desk.welcome;

import java.nio.file.Path;
import java.util.List;
import walebook.book.Book;
import walebook.book.RescueReport;
import walebook.problem.Answer;

/** The ways into a book; each may take its time and is called in the background. */
public interface Ways {
  /** Books that were open lately, the last one first. */
  List<Path> recent();

  /** Makes a new, empty book and opens it. */
  Answer<Book> makeBook(Path file, String name);

  Answer<Book> openBook(Path file);

  /** Makes the invented class, or opens it when it was made before. */
  Answer<Book> openDemo();

  /** Reads what can be read of a damaged book into a new one beside it. */
  Answer<RescueReport> rescue(Path damaged);

  /** Goes back to a backup and opens the book. */
  Answer<Book> goBack(Path file, Path copy);
}
