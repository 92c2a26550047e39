package walebook.desk.classroom;

import java.util.UUID;
import javafx.beans.property.ReadOnlyObjectProperty;
import org.jspecify.annotations.Nullable;
import walebook.act.classroom.CompareFair;
import walebook.desk.common.Session;
import walebook.desk.common.Wish;
import walebook.words.Words;

/**
 * What all parts that ask about the class have alike: the filters, the question, what was found.
 *
 * @param <T> what is found, worded and drawn
 */
abstract class AskingModel<T> {
  private final Asking<T> asking;

  AskingModel(FiltersViewModel filters) {
    asking = new Asking<>(filters, this::ask);
  }

  /** Takes what is asked now, on the window's thread; the work is done elsewhere. */
  abstract Asking.Work<T> ask(CompareFair.Which which);

  final Asking<T> asking() {
    return asking;
  }

  /** What was found last; null until the book was read, and for a book without a class. */
  final ReadOnlyObjectProperty<@Nullable T> foundProperty() {
    return asking.foundProperty();
  }

  final FiltersViewModel filters() {
    return asking.filters();
  }

  final Session session() {
    return asking.session();
  }

  final Words words() {
    return asking.words();
  }

  /** Shows a piece in its own place. */
  final void openPiece(UUID pieceId) {
    session().wish(new Wish("pieces", Wish.What.OPEN, pieceId));
  }

  /** Asks the place for test pieces to log one. */
  final void logFirst() {
    session().wish(new Wish("pieces", Wish.What.LOG_OWN, null));
  }
}
