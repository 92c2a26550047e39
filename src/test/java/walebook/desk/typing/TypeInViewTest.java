package walebook.desk.typing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.TableCell;
import javafx.scene.control.TextField;
import javafx.scene.layout.BackgroundFill;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import walebook.desk.PlannedClass;
import walebook.desk.common.Session;
import walebook.desk.common.Wish;
import walebook.desk.common.Worker;
import walebook.desk.look.Look;
import walebook.desk.look.TextSize;
import walebook.desk.look.Theme;

/** However far right one types, it is seen whose card it is. */
@ExtendWith(ApplicationExtension.class)
@SuppressWarnings("NullAway.Init")
class TypeInViewTest {
  @TempDir static Path folder;

  private PlannedClass made;
  private TypeInViewModel model;
  private TypeInView view;

  @Start
  void start(Stage stage) throws IOException {
    made = PlannedClass.in(Files.createTempDirectory(folder, "a").resolve("a.walebook"), 1);
    Session session = made.session(Worker.sameThread(), PlannedClass.OneFile.NONE);
    session.schoolClassProperty().set(made.room.schoolClass);
    model = new TypeInViewModel(session);
    session.wish(new Wish(TypeInViewModel.PLACE, Wish.What.OPEN, made.lesson.id()));
    view = new TypeInView(session, model);
    Scene scene = new Scene(view, 1000, 700);
    new Look(Theme.LIGHT, TextSize.USUAL).dress(scene);
    stage.setScene(scene);
    stage.show();
  }

  @AfterEach
  void close() {
    made.close();
  }

  @Test
  void nameCodeAndStateStayWhereTheyAreWhenTheFieldsScrollAway(FxRobot robot) {
    robot.interact(() -> model.settingsProperty().set(true));
    robot.interact(() -> model.cursor().go(0, "remark"));
    robot.interact(view::layout);
    WaitForAsyncUtils.waitForFxEvents();
    robot.sleep(200);
    Node table = Objects.requireNonNull(view.lookup(".table-view"));
    Bounds all = table.localToScene(table.getBoundsInLocal());
    assertThat(view.lookupAll(".table-cell.stays")).isNotEmpty();
    double kept = 0;
    for (Node each : view.lookupAll(".table-cell.stays")) {
      if (!isSeen(each)) {
        continue;
      }
      Bounds at = each.localToScene(each.getBoundsInLocal());
      assertThat(at.getMinX()).isGreaterThanOrEqualTo(all.getMinX() - 1);
      assertThat(at.getMinX()).isLessThan(all.getMinX() + 250);
      kept = Math.max(kept, at.getMaxX());
    }
    assertThat(view.lookupAll(".column-header.stays")).hasSize(3);
    for (Node each : view.lookupAll(".column-header.stays")) {
      assertThat(each.localToScene(0, 0).getX()).isLessThan(kept);
    }
    Node typed = Objects.requireNonNull(view.getScene().getFocusOwner());
    Bounds here = typed.localToScene(typed.getBoundsInLocal());
    assertThat(here.getMinX()).isGreaterThanOrEqualTo(kept);
    assertThat(here.getMaxX()).isLessThanOrEqualTo(all.getMaxX());
    // Back to the first field, which is not left under the names.
    robot.interact(() -> model.cursor().go(0, "cloth"));
    robot.interact(view::layout);
    WaitForAsyncUtils.waitForFxEvents();
    robot.sleep(200);
    Node first = Objects.requireNonNull(view.getScene().getFocusOwner());
    assertThat(first.localToScene(first.getBoundsInLocal()).getMinX()).isGreaterThanOrEqualTo(kept);
  }

  @Test
  void whatWasJustSavedStandsGreyInItsRow(FxRobot robot) {
    robot.interact(
        () -> {
          Objects.requireNonNull(model.rows().get(0).cell("end")).textProperty().set("g");
          Objects.requireNonNull(model.rows().get(0).cell("end-length")).textProperty().set("150");
        });
    robot.interact(() -> model.cursor().go(0, "end-length"));
    robot.interact(model::save);
    robot.interact(view::layout);
    WaitForAsyncUtils.waitForFxEvents();
    robot.interact(() -> model.cursor().go(0, "end-length"));
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(model.rows().get(0).isLogged()).isTrue();
    Node here = Objects.requireNonNull(view.getScene().getFocusOwner());
    assertThat(here).isInstanceOf(TextField.class);
    assertThat(((TextField) here).getText()).isEmpty();
    assertThat(((TextField) here).getPromptText()).isEqualTo("150");
  }

  /** The fields scroll away under what stays; the line below each card must not go under it too. */
  @Test
  void theLinesBetweenCardsAreSeenAlsoWhereNamesStay(FxRobot robot) {
    robot.interact(view::layout);
    int cells = 0;
    for (Node each : view.lookupAll(".table-cell.stays")) {
      if (isSeen(each) && each instanceof TableCell<?, ?> cell && !cell.isEmpty()) {
        double line = cell.getTableRow().getHeight() - 1;
        for (BackgroundFill fill : cell.getBackground().getFills()) {
          double painted = cell.getLayoutY() + cell.getHeight() - fill.getInsets().getBottom();
          assertThat(painted).isLessThanOrEqualTo(line);
        }
        cells++;
      }
    }
    assertThat(cells).isGreaterThan(4);
  }

  /** Tables keep cells in hand that measure, or wait for other rows. */
  private static boolean isSeen(Node node) {
    for (Node at = node; at != null; at = at.getParent()) {
      if (!at.isVisible()) {
        return false;
      }
    }
    return true;
  }
}
