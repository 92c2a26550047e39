package walebook.sheet;

import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.UUID;
import java.util.function.Supplier;
import walebook.book.Book;
import walebook.record.TestPiece;

/** Pieces one after the other, read from the book a few at a time so that memory stays flat. */
final class PieceRun implements Iterable<TestPiece> {
  private static final int AT_ONCE = 2000;

  private final Book book;
  private final Supplier<List<UUID>> order;
  private final ParentCodes parents;

  /**
   * Sets it up.
   *
   * @param order asked for when the first piece is
   * @param parents told of pieces before they are given
   */
  PieceRun(Book book, Supplier<List<UUID>> order, ParentCodes parents) {
    this.book = book;
    this.order = order;
    this.parents = parents;
  }

  @Override
  public Iterator<TestPiece> iterator() {
    return new Reader(order.get());
  }

  private final class Reader implements Iterator<TestPiece> {
    private final List<UUID> ids;
    private int read;
    private Iterator<TestPiece> now = List.<TestPiece>of().iterator();

    Reader(List<UUID> ids) {
      this.ids = ids;
    }

    @Override
    public boolean hasNext() {
      while (!now.hasNext() && read < ids.size()) {
        int end = Math.min(ids.size(), read + AT_ONCE);
        List<TestPiece> pieces = book.pieces().of(ids.subList(read, end));
        parents.prepare(pieces);
        now = pieces.iterator();
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
