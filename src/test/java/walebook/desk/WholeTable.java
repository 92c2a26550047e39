package walebook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.text.Text;
import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;

/** Holds that a table of a place stands whole in the window, by whatever column it is sorted. */
public final class WholeTable {
  private WholeTable() {}

  /**
   * Looks at the first table of a place.
   *
   * @param widePx what the place may take
   */
  public static void is(FxRobot robot, Node place, double widePx) {
    TableView<?> table = (TableView<?>) place.lookup(".table-view");
    double columns =
        table.getColumns().stream()
            .filter(TableColumn::isVisible)
            .mapToDouble(TableColumn::getWidth)
            .sum();
    assertThat(columns).isLessThanOrEqualTo(table.getWidth());
    assertThat(table.getWidth()).isLessThanOrEqualTo(widePx);
    for (int i = 0; i < table.getColumns().size(); i++) {
      sort(robot, table, i);
      nothingCut(table, ".column-header > .label");
      nothingCut(table, ".table-cell");
    }
  }

  private static <T> void sort(FxRobot robot, TableView<T> table, int column) {
    robot.interact(() -> table.getSortOrder().setAll(List.of(table.getColumns().get(column))));
    WaitForAsyncUtils.waitForFxEvents();
  }

  /** What is cut short ends in dots on the screen, while its own text is whole. */
  private static void nothingCut(TableView<?> table, String kind) {
    for (Node node : table.lookupAll(kind)) {
      // Rows that are put by for later are neither seen nor laid out.
      if (node.getParent().isVisible()
          && node instanceof Labeled cell
          && cell.lookup(".text") instanceof Text seen) {
        String whole = cell.getText() == null ? "" : cell.getText();
        if (!whole.isEmpty()) {
          assertThat(seen.getText()).isEqualTo(whole);
        }
      }
    }
  }
}
