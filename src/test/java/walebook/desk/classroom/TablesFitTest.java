package walebook.desk.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.control.ToggleButton;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import walebook.desk.DemoPlace;

/** No table of the place is wider than the place, in the demo class's window of 1280 by 800. */
@ExtendWith(ApplicationExtension.class)
class TablesFitTest {
  @TempDir Path folder;

  @SuppressWarnings("NullAway.Init")
  private DemoPlace<ClassroomView> demo;

  @Start
  void start(Stage stage) {
    demo = new DemoPlace<>(stage, folder, ClassroomView::new);
  }

  @AfterEach
  void close() {
    demo.close();
  }

  @Test
  void everyTableStandsWholeWithoutScrollingSideways(FxRobot robot) throws Exception {
    List<ToggleButton> parts =
        demo.view.lookupAll(".segments .toggle-button").stream()
            .map(ToggleButton.class::cast)
            .toList();
    assertThat(parts).hasSizeGreaterThan(6);
    int tables = 0;
    for (ToggleButton part : parts) {
      robot.interact(part::fire);
      WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, demo.view::isAtRest);
      WaitForAsyncUtils.waitForFxEvents();
      for (Node node : demo.view.lookupAll(".table-view")) {
        TableView<?> table = (TableView<?>) node;
        double columns =
            table.getVisibleLeafColumns().stream().mapToDouble(TableColumn::getWidth).sum();
        assertThat(columns)
            .as("%s, %s", part.getText(), table.getAccessibleText())
            .isLessThanOrEqualTo(table.getWidth());
        assertThat(table.getWidth()).isLessThanOrEqualTo(DemoPlace.WIDE);
        nothingCut(part.getText(), table);
        tables++;
      }
    }
    assertThat(tables).isGreaterThanOrEqualTo(6);
    assertThat(Objects.requireNonNull(demo.view.getScene()).getWidth()).isEqualTo(DemoPlace.WIDE);
  }

  /** What is cut short ends in dots on the screen, while the cell's own text is whole. */
  private static void nothingCut(String part, TableView<?> table) {
    for (String kind : List.of(".column-header > .label", ".table-cell")) {
      for (Node node : table.lookupAll(kind)) {
        if (node instanceof Labeled cell && cell.lookup(".text") instanceof Text seen) {
          String whole = cell.getText() == null ? "" : cell.getText();
          if (!whole.isEmpty()) {
            assertThat(seen.getText()).as(part).isEqualTo(whole);
          }
        }
      }
    }
  }
}
