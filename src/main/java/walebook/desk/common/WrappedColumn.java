package walebook.desk.common;

import javafx.scene.layout.VBox;

/**
 * A column whose least height counts at the width it has: a pane that scrolls asks without one, and
 * would show no bar beside text and cards that wrap.
 */
final class WrappedColumn extends VBox {
  @Override
  protected double computeMinHeight(double width) {
    return super.computeMinHeight(width < 0 && getWidth() > 0 ? getWidth() : width);
  }
}
