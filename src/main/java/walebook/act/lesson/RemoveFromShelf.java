package walebook.act.lesson;

import java.util.UUID;
import walebook.book.Book;

/** Takes a pack from the book's shelf, and puts it back. What was taught from it stays readable. */
public final class RemoveFromShelf {
  private final Book book;

  public RemoveFromShelf(Book book) {
    this.book = book;
  }

  /** True when it stood there. */
  public boolean remove(UUID packId) {
    return book.packShelf().take(packId);
  }

  public void undo(UUID packId) {
    book.packShelf().put(packId);
  }
}
