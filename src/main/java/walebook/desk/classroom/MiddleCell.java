package walebook.desk.classroom;

import javafx.scene.control.OverrunStyle;
import javafx.scene.control.TableCell;
import javafx.scene.control.Tooltip;
import org.jspecify.annotations.Nullable;

/**
 * Long settings differ at both ends, so the middle is what is left out.
 *
 * @param <T> what a row holds
 */
final class MiddleCell<T> extends TableCell<T, String> {
  MiddleCell() {
    setTextOverrun(OverrunStyle.CENTER_ELLIPSIS);
  }

  @Override
  protected void updateItem(@Nullable String setting, boolean empty) {
    super.updateItem(setting, empty);
    setText(empty ? null : setting);
    setTooltip(empty || setting == null ? null : new Tooltip(setting));
  }
}
