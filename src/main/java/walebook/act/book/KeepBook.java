package walebook.act.book;

import java.time.Clock;
import walebook.book.Book;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Unit;
import walebook.record.BookInfo;

/** Changes what a book is called and the unit its people work in; nothing measured changes. */
public final class KeepBook {
  private final Book book;
  private final Clock clock;

  public KeepBook(Book book, Clock clock) {
    this.book = book;
    this.clock = clock;
  }

  /** Saves a name and a unit of length, or says what is in the way. */
  public Answer<BookInfo> keep(String name, Unit lengthUnit) {
    if (name.isBlank()) {
      return Answer.bad(Problem.refuse("field.needed", Place.field("book-name"), "", ""));
    }
    BookInfo before = book.info();
    BookInfo after =
        new BookInfo(
            before.id(),
            name.strip(),
            before.invented(),
            lengthUnit,
            before.stamp().next(clock.instant()));
    book.keep(after);
    return Answer.good(after);
  }
}
