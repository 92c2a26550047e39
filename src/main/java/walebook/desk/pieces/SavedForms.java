package walebook.desk.pieces;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.act.piece.KeepDraft;
import walebook.act.piece.PieceEntry;
import walebook.act.piece.ReadyPhoto;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.record.Change;

/**
 * What was typed for the pieces saved lately, so that it is there again when a piece is taken back.
 * Called on the window's thread.
 */
final class SavedForms {
  private static final int MOST = 12;

  private final Map<UUID, Saved> saved = new LinkedHashMap<>();

  /**
   * A form as it stood when its piece was saved.
   *
   * @param start with the texts that were typed
   */
  record Saved(FormStart start, List<ReadyPhoto> photos) {
    Saved {
      photos = List.copyOf(photos);
    }

    PieceEntry entry() {
      return start.entry();
    }
  }

  /**
   * Remembers a form; one over a piece that was in the book already is not what made it. It comes
   * back for a piece of another key, since the history knows the first one for good.
   */
  void keep(Saved form) {
    if (form.start().mending() != null) {
      return;
    }
    UUID pieceId = form.entry().pieceId();
    saved.values().removeIf(each -> each.entry().pieceId().equals(pieceId));
    FormStart next = form.start().typed(form.entry().as(Ids.next()), "");
    saved.put(pieceId, new Saved(next, form.photos()));
    saved.keySet().removeAll(new ArrayList<>(saved.keySet()).subList(0, tooMany()));
  }

  private int tooMany() {
    return Math.max(0, saved.size() - MOST);
  }

  /** What was typed for a piece, or null. */
  @Nullable Saved find(UUID pieceId) {
    return saved.get(pieceId);
  }

  /** The piece that was taken back and whose texts stand in a form for another key, or null. */
  @Nullable UUID behind(@Nullable UUID formPieceId) {
    return saved.entrySet().stream()
        .filter(each -> each.getValue().entry().pieceId().equals(formPieceId))
        .map(Map.Entry::getKey)
        .findFirst()
        .orElse(null);
  }

  /** What was typed for each piece, to be looked up away from the window's thread. */
  Map<UUID, Saved> all() {
    return new LinkedHashMap<>(saved);
  }

  /**
   * Puts what was typed for pieces that are gone among the drafts, where none is in the way, and
   * takes it from there when they are back; never on the window's thread.
   *
   * @return the keys of the pieces that are taken back; one in the bin is not
   */
  static Set<UUID> follow(Book book, Map<UUID, Saved> forms) {
    KeepDraft drafts = new KeepDraft(book);
    Set<UUID> gone = new HashSet<>();
    forms.forEach(
        (pieceId, form) -> {
          if (book.pieces().find(pieceId) == null) {
            if (!isTakenBack(book, pieceId)) {
              return;
            }
            gone.add(pieceId);
            drafts.keepIfFree(form.entry(), form.photos());
          } else {
            drafts.dropIfSame(form.entry(), form.photos());
          }
        });
    return gone;
  }

  private static boolean isTakenBack(Book book, UUID pieceId) {
    List<Change> changes = book.history().of("test_piece", pieceId);
    return !changes.isEmpty()
        && changes.get(0).act().equals("undo")
        && book.bin().all().stream().noneMatch(each -> each.entityId().equals(pieceId));
  }
}
