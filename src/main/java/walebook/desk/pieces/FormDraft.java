package walebook.desk.pieces;

import java.util.UUID;
import walebook.act.piece.KeepDraft;
import walebook.act.piece.PieceEntry;
import walebook.book.Book;

/** The draft of a form: of a new piece, or over one in the book; never on the window's thread. */
final class FormDraft {
  private final KeepDraft drafts;
  private final FormStart start;

  FormDraft(Book book, FormStart start) {
    this.drafts = new KeepDraft(book);
    this.start = start;
  }

  void keep(PieceEntry entry) {
    if (start.mending() == null) {
      drafts.keep(entry);
    } else {
      drafts.keepMending(entry);
    }
  }

  void drop() {
    if (start.mending() == null) {
      drafts.drop(start.entry());
    } else {
      drafts.dropMending(start.entry().pieceId());
    }
  }

  /**
   * Lets go of it; what differs from when the form was filled waits as the mending of a piece.
   *
   * @return whether anything waits
   */
  boolean handOver(PieceEntry entry, UUID pieceId) {
    drop();
    boolean differs = !entry.equals(start.entry());
    if (differs) {
      drafts.keepMending(entry.as(pieceId));
    }
    return differs;
  }
}
