package walebook.desk.term;

import javafx.scene.control.TableCell;
import org.jspecify.annotations.Nullable;
import walebook.compare.assessed.Coverage;
import walebook.desk.common.StandingBadge;
import walebook.words.Words;

/** A cell of a table that shows how far a student has come with a criterion. */
final class StandingCell<T> extends TableCell<T, Coverage.Cell> {
  private final Words words;

  StandingCell(Words words) {
    this.words = words;
  }

  @Override
  protected void updateItem(Coverage.@Nullable Cell item, boolean empty) {
    super.updateItem(item, empty);
    setText(null);
    setGraphic(
        item == null || empty
            ? null
            : new StandingBadge(words, item.standing(), words.say(item.says())));
  }
}
