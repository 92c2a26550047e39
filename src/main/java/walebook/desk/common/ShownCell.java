package walebook.desk.common;

import java.util.function.Function;
import javafx.scene.control.TableCell;
import org.jspecify.annotations.Nullable;

/**
 * A cell that shows a row's own text.
 *
 * @param <T> what a row holds
 */
final class ShownCell<T> extends TableCell<T, T> {
  private final Function<T, String> shown;

  ShownCell(Function<T, String> shown) {
    this.shown = shown;
  }

  @Override
  protected void updateItem(@Nullable T item, boolean empty) {
    super.updateItem(item, empty);
    setText(item == null || empty ? "" : shown.apply(item));
  }
}
