package walebook.desk.pieces;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.act.piece.DraftPhotos;
import walebook.act.piece.KeepDraft;
import walebook.act.piece.PieceEntry;
import walebook.act.piece.ReadyPhoto;
import walebook.book.Book;

/** The draft of a form: of a new piece, or over one in the book; never on the window's thread. */
final class FormDraft {
  private final Book book;
  private final KeepDraft drafts;
  private final DraftPhotos photos;
  private final FormStart start;

  FormDraft(Book book, FormStart start) {
    this.book = book;
    this.drafts = new KeepDraft(book);
    this.photos = new DraftPhotos(book);
    this.start = start;
  }

  /** Keeps the texts, and the photos where they are others than those kept before. */
  PieceEntry keep(PieceEntry entry, @Nullable List<ReadyPhoto> others) {
    return book.inOneStep(
        () -> {
          if (start.mending() == null) {
            drafts.keep(entry);
          } else {
            drafts.keepMending(entry);
          }
          if (others != null) {
            photos.keep(entry, others);
          }
          return entry;
        });
  }

  void drop() {
    if (start.mending() == null) {
      drafts.drop(start.entry());
    } else {
      drafts.dropMending(start.entry());
    }
  }

  /**
   * Lets go of it; what differs from when the form was filled waits as the mending of a piece.
   *
   * @param added photos that the piece does not have
   * @return whether anything waits
   */
  boolean handOver(PieceEntry entry, UUID pieceId, List<ReadyPhoto> added) {
    drop();
    boolean differs = !added.isEmpty() || !entry.equals(start.entry());
    if (differs) {
      drafts.keepMending(entry.as(pieceId));
      photos.keep(entry.as(pieceId), added);
    }
    return differs;
  }
}
