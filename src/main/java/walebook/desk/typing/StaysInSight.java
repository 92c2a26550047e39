package walebook.desk.typing;

import javafx.application.Platform;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollBar;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.control.skin.TableColumnHeader;
import org.jspecify.annotations.Nullable;

/** Keeps a table's first columns in sight, while the others scroll away under them. */
final class StaysInSight {
  private static final String STAYS = "stays";

  /** What the bar at the side takes, px. */
  private static final double BAR = 14;

  private final TableView<?> table;
  private final int columns;
  private final DoubleProperty shift = new SimpleDoubleProperty(this, "shift");
  private @Nullable ScrollBar bar;

  /**
   * Watches a table.
   *
   * @param columns how many stay
   */
  StaysInSight(TableView<?> table, int columns) {
    this.table = table;
    this.columns = columns;
    table.skinProperty().addListener((from, old, now) -> find());
  }

  /** A cell of a column that stays. */
  void cell(Node cell) {
    stays(cell);
  }

  /** The head of a column that stays; its frame is made later, by the table. */
  void head(Label head) {
    head.parentProperty().addListener((from, old, now) -> Platform.runLater(() -> framed(head)));
  }

  private void framed(Label head) {
    Node at = head;
    while (at != null && !(at instanceof TableColumnHeader)) {
      at = at.getParent();
    }
    if (at != null && !at.translateXProperty().isBound()) {
      stays(at);
    }
  }

  private void stays(Node node) {
    node.getStyleClass().add(STAYS);
    node.translateXProperty().bind(shift);
    node.setViewOrder(-1);
  }

  private void find() {
    for (Node each : table.lookupAll(".scroll-bar")) {
      if (each instanceof ScrollBar found && found.getOrientation() == Orientation.HORIZONTAL) {
        bar = found;
        shift.bind(found.valueProperty());
      }
    }
  }

  /** Scrolls no further than it takes to see a column beside those that stay. */
  void reveal(int column) {
    double left = 0;
    double kept = 0;
    for (int i = 0; i < column; i++) {
      double width = table.getColumns().get(i).getWidth();
      left += width;
      kept += i < columns ? width : 0;
    }
    ScrollBar now = bar;
    if (now == null) {
      table.scrollToColumnIndex(column);
      return;
    }
    TableColumn<?, ?> shown = table.getColumns().get(column);
    double seen = table.getWidth() - BAR;
    double at = now.getValue();
    if (left + shown.getWidth() - at > seen) {
      at = left + shown.getWidth() - seen;
    }
    if (left - at < kept) {
      at = left - kept;
    }
    now.setValue(Math.max(0, Math.min(now.getMax(), at)));
  }
}
