package walebook.desk.typing;

import javafx.beans.value.ChangeListener;
import javafx.scene.control.TableCell;
import org.jspecify.annotations.Nullable;
import walebook.words.Words;

/** How a card stands, in a word. */
final class CardState extends TableCell<CardRow, CardRow> {
  private final Words words;
  private final ChangeListener<CardRow.State> moved = (from, old, now) -> show(now);
  private @Nullable CardRow row;

  CardState(Words words, TypeInViewModel model) {
    this.words = words;
    getStyleClass().addAll("card-cell", "card-label");
    setAccessibleText(model.session().words().say("desk.typing.col.state"));
  }

  @Override
  protected void updateItem(@Nullable CardRow next, boolean empty) {
    super.updateItem(next, empty);
    CardRow before = row;
    if (before != null) {
      before.stateProperty().removeListener(moved);
    }
    row = empty ? null : next;
    CardRow now = row;
    if (now == null) {
      setText("");
    } else {
      now.stateProperty().addListener(moved);
      show(now.state());
    }
  }

  private void show(CardRow.State now) {
    setText(
        words.say(
            switch (now) {
              case OPEN -> "desk.typing.state.open";
              case READY -> "desk.typing.state.ready";
              case ASKS -> "desk.typing.state.asks";
              case IN_THE_WAY -> "desk.typing.state.mend";
              case LOGGED -> "desk.typing.state.logged";
              case CLASH -> "desk.typing.state.clash";
            }));
    getStyleClass().removeAll("met", "asks", "refused");
    switch (now) {
      case READY -> getStyleClass().add("met");
      case ASKS -> getStyleClass().add("asks");
      case IN_THE_WAY, CLASH -> getStyleClass().add("refused");
      case OPEN, LOGGED -> {}
    }
  }
}
