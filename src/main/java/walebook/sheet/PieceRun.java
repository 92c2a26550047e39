package walebook.sheet;

import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.function.Supplier;
import walebook.book.PieceOrder;
import walebook.record.TestPiece;

/** Pieces one after the other, read from the book a few at a time so that memory stays flat. */
final class PieceRun implements Iterable<TestPiece> {
  private static final int AT_ONCE = 2000;

  private final Supplier<PieceOrder> order;
  private final ParentCodes parents;

  /**
   * Sets it up.
   *
   * @param order asked for when the first piece is
   * @param parents told of pieces before they are given
   */
  PieceRun(Supplier<PieceOrder> order, ParentCodes parents) {
    this.order = order;
    this.parents = parents;
  }

  @Override
  public Iterator<TestPiece> iterator() {
    return new Reader(order.get());
  }

  private final class Reader implements Iterator<TestPiece> {
    private final PieceOrder pieces;
    private int read;
    private Iterator<TestPiece> now = List.<TestPiece>of().iterator();

    Reader(PieceOrder pieces) {
      this.pieces = pieces;
    }

    @Override
    public boolean hasNext() {
      while (!now.hasNext() && read < pieces.size()) {
        int end = Math.min(pieces.size(), read + AT_ONCE);
        List<TestPiece> some = pieces.some(read, end);
        parents.prepare(some);
        now = some.iterator();
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
