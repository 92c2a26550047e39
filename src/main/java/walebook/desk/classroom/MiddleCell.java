package walebook.desk.classroom;

import javafx.scene.control.OverrunStyle;
import javafx.scene.control.TableCell;
import javafx.scene.control.Tooltip;
import org.jspecify.annotations.Nullable;

/**
 * Long settings differ at both ends, so the middle is what is left out; all of it stands in a tip,
 * made when somebody points at the cell, since a tip is a window of its own and slow to make.
 *
 * @param <T> what a row holds
 */
final class MiddleCell<T> extends TableCell<T, String> {
  MiddleCell() {
    setTextOverrun(OverrunStyle.CENTER_ELLIPSIS);
    setOnMouseEntered(pointed -> tell());
  }

  @Override
  protected void updateItem(@Nullable String setting, boolean empty) {
    super.updateItem(setting, empty);
    setText(empty ? null : setting);
    if (getTooltip() != null) {
      tell();
    }
  }

  private void tell() {
    String setting = getItem();
    setTooltip(isEmpty() || setting == null ? null : new Tooltip(setting));
  }
}
