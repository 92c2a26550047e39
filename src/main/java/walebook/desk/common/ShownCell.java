package walebook.desk.common;

import java.util.function.Function;
import javafx.scene.control.TableCell;
import javafx.scene.text.Text;
import org.jspecify.annotations.Nullable;

/**
 * A cell that shows a row's own text. What is wider than the column goes on below from its last
 * blank that fits, since a figure cut short is another figure.
 *
 * @param <T> what a row holds
 */
final class ShownCell<T> extends TableCell<T, T> {
  /** A letter is no wider than this part of the letters' size. */
  private static final double WIDEST = 0.7;

  private final Function<T, String> shown;

  ShownCell(Function<T, String> shown) {
    this.shown = shown;
    widthProperty().addListener((from, old, now) -> show());
    fontProperty().addListener((from, old, now) -> show());
    insetsProperty().addListener((from, old, now) -> show());
  }

  @Override
  protected void updateItem(@Nullable T item, boolean empty) {
    super.updateItem(item, empty);
    show();
  }

  private void show() {
    T item = getItem();
    setText(item == null || isEmpty() ? "" : broken(shown.apply(item)));
  }

  private String broken(String text) {
    double room = getWidth() - snappedLeftInset() - snappedRightInset();
    int at = text.lastIndexOf(' ');
    if (at < 0 || room <= 0 || fits(text, room)) {
      return text;
    }
    while (text.lastIndexOf(' ', at - 1) > 0 && !fits(text.substring(0, at), room)) {
      at = text.lastIndexOf(' ', at - 1);
    }
    return text.substring(0, at) + "\n" + text.substring(at + 1);
  }

  private boolean fits(String text, double room) {
    if (text.length() * WIDEST * getFont().getSize() <= room) {
      return true;
    }
    Text measured = new Text(text);
    measured.setFont(getFont());
    return measured.getLayoutBounds().getWidth() <= room;
  }
}
