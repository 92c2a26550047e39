package walebook.desk.common;

import java.util.function.Function;
import javafx.scene.control.TableCell;
import org.jspecify.annotations.Nullable;
import walebook.drawing.Drawing;
import walebook.words.Words;

/**
 * A cell that draws its row.
 *
 * @param <T> what a row holds
 */
final class DrawnCell<T> extends TableCell<T, T> {
  private final Function<T, Drawing> drawn;
  private final PicturePane picture;

  DrawnCell(Words words, Function<T, Drawing> drawn) {
    this.drawn = drawn;
    picture = new PicturePane(words);
    picture.prefWidthProperty().bind(widthProperty().subtract(20));
    setText(null);
  }

  @Override
  protected void updateItem(@Nullable T item, boolean empty) {
    super.updateItem(item, empty);
    if (item == null || empty) {
      setGraphic(null);
    } else {
      picture.show(drawn.apply(item));
      setGraphic(picture);
    }
  }
}
