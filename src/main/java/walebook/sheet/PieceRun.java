package walebook.sheet;

import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.UUID;
import walebook.book.Book;
import walebook.record.TestPiece;

/** Pieces one after the other, read from the book a few at a time so that memory stays flat. */
final class PieceRun implements Iterable<TestPiece> {
  private static final int AT_ONCE = 2000;

  private final Book book;
  private final List<UUID> ids;

  PieceRun(Book book, List<UUID> ids) {
    this.book = book;
    this.ids = List.copyOf(ids);
  }

  @Override
  public Iterator<TestPiece> iterator() {
    return new Reader();
  }

  private final class Reader implements Iterator<TestPiece> {
    private int read;
    private Iterator<TestPiece> now = List.<TestPiece>of().iterator();

    @Override
    public boolean hasNext() {
      while (!now.hasNext() && read < ids.size()) {
        int end = Math.min(ids.size(), read + AT_ONCE);
        now = book.pieces().of(ids.subList(read, end)).iterator();
        read = end;
      }
      return now.hasNext();
    }

    @Override
    public TestPiece next() {
      if (!hasNext()) {
        throw new NoSuchElementException();
      }
      return now.next();
    }
  }
}
