package walebook.book;

import java.util.List;
import walebook.record.TestPiece;

/**
 * Pieces one after the other, of which only the order is held. Good inside the step that it was
 * asked for in: what is written after that is not seen, or seen in the wrong place.
 */
public interface PieceOrder {
  int size();

  /** The pieces from one place in the order to before another, both counted from nought. */
  List<TestPiece> some(int from, int before);
}
