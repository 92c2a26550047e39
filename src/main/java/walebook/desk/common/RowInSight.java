package walebook.desk.common;

import java.util.Set;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TableRow;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/**
 * A table on a page shows the row that the keys go to within itself, wherever the page is: this
 * brings the page there too.
 */
final class RowInSight {
  private static final Set<KeyCode> GOING =
      Set.of(
          KeyCode.UP, KeyCode.DOWN, KeyCode.PAGE_UP, KeyCode.PAGE_DOWN, KeyCode.HOME, KeyCode.END);

  private final ScrollPane page;

  private RowInSight(ScrollPane page) {
    this.page = page;
  }

  /** Minds the keys on a page. */
  static void on(ScrollPane page) {
    RowInSight rows = new RowInSight(page);
    // Once the key is up the table has scrolled within itself.
    page.addEventFilter(KeyEvent.KEY_RELEASED, rows::released);
  }

  private void released(KeyEvent key) {
    if (GOING.contains(key.getCode()) && key.getTarget() instanceof TableView<?> table) {
      for (Node each : table.lookupAll(".table-row-cell")) {
        if (each instanceof TableRow<?> row && row.isSelected() && row.isVisible()) {
          show(row);
        }
      }
    }
  }

  private void show(Node row) {
    Node content = page.getContent();
    Bounds at = content.sceneToLocal(row.localToScene(row.getLayoutBounds()));
    double seen = page.getViewportBounds().getHeight();
    double room = content.getLayoutBounds().getHeight() - seen;
    if (room <= 0) {
      return;
    }
    double top = page.getVvalue() * room;
    // A row more, so that one sees where it goes on.
    double from = at.getMinY() - at.getHeight();
    double to = at.getMaxY() + at.getHeight();
    double next = Math.max(to - seen, Math.min(from, top));
    page.setVvalue(Math.max(0, Math.min(1, next / room)));
  }
}
