package walebook.desk.classroom;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import javafx.css.PseudoClass;
import javafx.scene.control.TableCell;
import org.jspecify.annotations.Nullable;

/**
 * A cell of the progress table: its numbers over a fill that stands as high as the share that is
 * done, in quarters. Height, not shade, so that it reads without colours.
 */
final class ShareCell extends TableCell<ProgressRow, ProgressRow> {
  private static final PseudoClass NOT_PLANNED = PseudoClass.getPseudoClass("not-planned");
  private static final List<PseudoClass> QUARTERS =
      Stream.of("none", "quarter", "half", "three-quarters", "all")
          .map(PseudoClass::getPseudoClass)
          .toList();

  private final Function<ProgressRow, Double> share;
  private final Function<ProgressRow, String> shown;

  ShareCell(Function<ProgressRow, Double> share, Function<ProgressRow, String> shown) {
    this.share = share;
    this.shown = shown;
    getStyleClass().add("share-cell");
  }

  @Override
  protected void updateItem(@Nullable ProgressRow item, boolean empty) {
    super.updateItem(item, empty);
    boolean none = item == null || empty;
    setText(none ? "" : shown.apply(item));
    int now = none ? -1 : ProgressRow.quarters(share.apply(item));
    pseudoClassStateChanged(NOT_PLANNED, now < 0);
    for (int i = 0; i < QUARTERS.size(); i++) {
      pseudoClassStateChanged(QUARTERS.get(i), i == now);
    }
  }
}
