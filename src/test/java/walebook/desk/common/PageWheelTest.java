package walebook.desk.common;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import javafx.event.Event;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ScrollBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TableRow;
import javafx.scene.input.KeyCode;
import javafx.scene.input.PickResult;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import walebook.desk.look.Look;
import walebook.desk.look.TextSize;
import walebook.desk.look.Theme;

/** A tutor turns the wheel to get down a page, whatever comes under the pointer meanwhile. */
@SuppressWarnings("NullAway.Init")
@ExtendWith(ApplicationExtension.class)
class PageWheelTest {
  private static final int SEEN = 4;

  private ColumnTable<Integer> table;
  private Region above;
  private ScrollPane page;

  @Start
  void start(Stage stage) {
    table = new ColumnTable<>();
    table.words("number", 8, each -> "number " + each);
    table.asHighAs(SEEN);
    above = high(200);
    page = new ScrollPane(new VBox(above, table, high(1500)));
    page.setFitToWidth(true);
    PageWheel.on(page);
    RowInSight.on(page);
    Scene scene = new Scene(page, 600, 400);
    new Look(Theme.LIGHT, TextSize.USUAL).dress(scene);
    stage.setScene(scene);
    stage.show();
  }

  @Test
  void overATableWithAllRowsInSightThePageScrolls(FxRobot robot) {
    rows(robot, SEEN);
    turn(robot, table.lookup(".table-cell"), -40);
    assertThat(page.getVvalue()).isGreaterThan(0);
  }

  @Test
  void aTableWithMoreToShowScrollsAndThenLeavesTheWheelToThePage(FxRobot robot) {
    rows(robot, 2 * SEEN);
    Node cell = table.lookup(".table-cell");
    turn(robot, cell, -40);
    assertThat(bar().getValue()).isGreaterThan(0);
    assertThat(page.getVvalue()).isZero();
    robot.interact(() -> bar().setValue(1));
    turn(robot, cell, -40);
    assertThat(page.getVvalue()).isGreaterThan(0);
  }

  @Test
  void aTurnThatBeganOnThePageGoesOnOverATable(FxRobot robot) {
    rows(robot, 2 * SEEN);
    turn(robot, above, -40);
    double was = page.getVvalue();
    turn(robot, table.lookup(".table-cell"), -40);
    assertThat(page.getVvalue()).isGreaterThan(was);
    assertThat(bar().getValue()).isZero();
  }

  @Test
  void theRowThatTheKeysGoToIsInSight(FxRobot robot) {
    rows(robot, 2 * SEEN);
    robot.interact(
        () -> {
          above.setMinHeight(350);
          table.requestFocus();
          table.getSelectionModel().select(0);
        });
    for (int i = 0; i < SEEN; i++) {
      robot.type(KeyCode.DOWN);
      WaitForAsyncUtils.waitForFxEvents();
    }
    Node row =
        table.lookupAll(".table-row-cell").stream()
            .filter(each -> ((TableRow<?>) each).isSelected())
            .findFirst()
            .orElseThrow();
    double bottom = row.localToScene(row.getLayoutBounds()).getMaxY();
    assertThat(bottom).isLessThanOrEqualTo(page.getViewportBounds().getHeight());
    robot.type(KeyCode.HOME);
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(table.getSelectionModel().getSelectedIndex()).isZero();
  }

  private void rows(FxRobot robot, int many) {
    List<Integer> all = IntStream.range(0, many).boxed().toList();
    robot.interact(() -> table.getItems().setAll(all));
    WaitForAsyncUtils.waitForFxEvents();
  }

  private ScrollBar bar() {
    return (ScrollBar) table.lookup(".scroll-bar:vertical");
  }

  private static void turn(FxRobot robot, Node over, double deltaY) {
    Point2D at = over.localToScene(5, 5);
    robot.interact(
        () ->
            Event.fireEvent(
                over,
                new ScrollEvent(
                    ScrollEvent.SCROLL,
                    at.getX(),
                    at.getY(),
                    at.getX(),
                    at.getY(),
                    false,
                    false,
                    false,
                    false,
                    false,
                    false,
                    0,
                    deltaY,
                    0,
                    deltaY,
                    ScrollEvent.HorizontalTextScrollUnits.NONE,
                    0,
                    ScrollEvent.VerticalTextScrollUnits.NONE,
                    0,
                    0,
                    new PickResult(over, at.getX(), at.getY()))));
    WaitForAsyncUtils.waitForFxEvents();
  }

  private static Region high(double px) {
    Region region = new Region();
    region.setMinHeight(px);
    return region;
  }
}
