package walebook.desk.typing;

import java.util.Map;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import walebook.act.card.CardSheet;
import walebook.act.card.KeepCards;
import walebook.desk.common.Session;

/** Keeps what is typed into a lesson's cards, so that it is there again after a crash. */
final class CardsKept {
  private final Session session;
  private final Grid grid;
  private final ReadOnlyIntegerWrapper edits = new ReadOnlyIntegerWrapper(this, "edits");
  private int kept;

  CardsKept(Session session, Grid grid) {
    this.session = session;
    this.grid = grid;
  }

  /** Moves at each edit, so that a view can wait for a pause in the typing. */
  ReadOnlyIntegerProperty editsProperty() {
    return edits.getReadOnlyProperty();
  }

  /** Told of each edit. */
  void edited() {
    edits.set(edits.get() + 1);
  }

  /** Nothing was typed yet. */
  void fresh() {
    edits.set(0);
    kept = 0;
  }

  /** Keeps what was typed since it was last kept. */
  void keep(CardSheet of) {
    if (edits.get() != kept) {
      kept = edits.get();
      Map<String, String> typed = draft(of);
      session.run(
          progress -> {
            new KeepCards(session.book()).keep(of.lesson().id(), typed);
            return typed;
          },
          done -> {});
    }
  }

  /** Keeps it at once, before the book is closed. */
  void rest(CardSheet of) {
    if (edits.get() != kept) {
      new KeepCards(session.book()).keep(of.lesson().id(), draft(of));
    }
  }

  private Map<String, String> draft(CardSheet of) {
    Map<String, String> typed = CardDraft.of(grid.rows());
    String on = grid.on();
    if (!on.equals(of.lesson().taughtOn().toString())) {
      typed.put(Grid.ON, on);
    }
    return typed;
  }
}
