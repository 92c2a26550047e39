package walebook.desk.pieces;

import java.util.UUID;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.Session;

/** One piece whole, read anew when the book changes. */
public final class OnePieceViewModel {
  private final Session session;
  private final ReadOnlyObjectWrapper<@Nullable WholePiece> piece =
      new ReadOnlyObjectWrapper<>(this, "piece");
  private @Nullable UUID shown;

  public OnePieceViewModel(Session session) {
    this.session = session;
    session.changesProperty().addListener((from, old, now) -> again());
    session.namesHiddenProperty().addListener((from, old, now) -> again());
  }

  /** The piece that is shown, or null. */
  public ReadOnlyObjectProperty<@Nullable WholePiece> pieceProperty() {
    return piece.getReadOnlyProperty();
  }

  /** The key of what was opened last, also when it is gone since; null before. */
  @Nullable UUID shownId() {
    return shown;
  }

  /**
   * Shows a piece; nothing is shown while it is being read, nor when the book has none with this
   * key.
   */
  public void open(UUID id) {
    shown = id;
    WholePiece before = piece.get();
    if (before != null && !before.id().equals(id)) {
      piece.set(null);
    }
    boolean hidden = session.namesHiddenProperty().get();
    session.run(
        progress -> java.util.Optional.ofNullable(new LoadPiece(session, hidden).of(id)),
        found -> {
          if (id.equals(shown)) {
            piece.set(found.orElse(null));
          }
        });
  }

  /** The picture of a photo, read in the background. */
  public void photo(UUID photoId, java.util.function.Consumer<byte[]> then) {
    session.run(progress -> session.book().photos().image(photoId), then);
  }

  private void again() {
    WholePiece now = piece.get();
    if (now != null) {
      open(now.id());
    }
  }
}
