package walebook.desk.common;

import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.text.Font;
import javafx.scene.text.Text;
import org.jspecify.annotations.Nullable;

/**
 * A cell whose words go on below instead of being cut.
 *
 * @param <T> what a row holds
 */
public final class WrappedCell<T> extends TableCell<T, String> {
  private static final double PADDING = 24;

  private final Text text = new Text();

  public WrappedCell(TableColumn<T, String> column) {
    text.getStyleClass().add("cell-text");
    text.fillProperty().bind(textFillProperty());
    text.fontProperty().bind(fontProperty());
    text.wrappingWidthProperty().bind(column.widthProperty().subtract(PADDING));
    text.wrappingWidthProperty().addListener((from, old, now) -> show());
    text.fontProperty().addListener((from, old, now) -> show());
  }

  /**
   * How many lines words take in such a cell.
   *
   * @param size of the letters, px
   * @param columnWide px
   */
  static double lines(String says, double size, double columnWide) {
    Font font = Font.font(Pencil.FAMILY, size);
    double wide = Math.max(1, columnWide - PADDING);
    Text all = new Text(BrokenLines.of(says, font, wide));
    all.setFont(font);
    Text one = new Text("x");
    one.setFont(font);
    all.setWrappingWidth(wide);
    return Math.round(all.getLayoutBounds().getHeight() / one.getLayoutBounds().getHeight());
  }

  @Override
  protected void updateItem(@Nullable String item, boolean empty) {
    super.updateItem(item, empty);
    show();
    setGraphic(empty ? null : text);
  }

  private void show() {
    String item = getItem();
    text.setText(item == null ? "" : BrokenLines.of(item, text.getFont(), text.getWrappingWidth()));
  }
}
