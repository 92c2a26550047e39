package walebook.desk.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.UUID;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import walebook.book.PieceFilter;
import walebook.desk.PlannedClass;
import walebook.desk.common.Session;
import walebook.desk.common.Wish;
import walebook.desk.common.Worker;
import walebook.record.TestPiece;

/** From the lesson's plan to its cards, typed in by keyboard alone. */
@ExtendWith(ApplicationExtension.class)
@SuppressWarnings("NullAway.Init")
class TypeInCardsTest {
  @TempDir static Path folder;

  private PlannedClass made;
  private OpenedWindow window;
  private Session session;

  @Start
  void start(Stage stage) {
    made = PlannedClass.in(folder.resolve(UUID.randomUUID() + ".walebook"), 1);
    session = made.session(Worker.sameThread(), PlannedClass.OneFile.NONE);
    session.schoolClassProperty().set(made.room.schoolClass);
    window = new OpenedWindow(stage, session);
  }

  @AfterEach
  void close() {
    window.close();
    made.close();
  }

  /** The keys of a quick hand or a scanner come within one frame. */
  private static void quickly(Scene scene, String... texts) {
    for (String each : texts) {
      for (int i = 0; i < each.length(); i++) {
        Node here = scene.getFocusOwner();
        String sign = each.substring(i, i + 1);
        Event.fireEvent(
            here,
            new KeyEvent(
                KeyEvent.KEY_TYPED, sign, sign, KeyCode.UNDEFINED, false, false, false, false));
      }
      Event.fireEvent(
          scene.getFocusOwner(),
          new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.ENTER, false, false, false, false));
    }
  }

  private static void card(FxRobot robot, String... texts) {
    for (String each : texts) {
      robot.write(each).type(KeyCode.ENTER);
      WaitForAsyncUtils.waitForFxEvents();
    }
  }

  @Test
  void twoCardsAreTypedAndSavedAndTheLessonShowsThem(FxRobot robot) {
    robot.press(KeyCode.CONTROL).type(KeyCode.DIGIT5).release(KeyCode.CONTROL);
    robot.interact(() -> session.wish(new Wish("lessons", Wish.What.OPEN, made.lesson.id())));
    robot.clickOn("Type in cards");
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(window.shell.currentProperty().get()).isEqualTo("typing");
    robot.interact(
        () -> quickly(window.scene, "104", "102", "g", "140", "n", "103", "4", "wavy", "first"));
    card(robot, "", "", "h", "150", "", "102", "5", "", "second");
    Node here = window.scene.getFocusOwner();
    assertThat(here).isInstanceOf(TextField.class);
    assertThat(here.getAccessibleText()).startsWith("Ada Pier, edge sewn");
    robot.press(KeyCode.CONTROL).type(KeyCode.S).release(KeyCode.CONTROL);
    WaitForAsyncUtils.waitForFxEvents();
    List<TestPiece> pieces = made.room.book.pieces().list(PieceFilter.ALL);
    assertThat(pieces)
        .hasSize(2)
        .allMatch(each -> each.whose().sewnOn().equals(made.lesson.taughtOn()))
        .extracting(each -> each.seen().remark())
        .containsExactlyInAnyOrder("first", "second");
    robot.clickOn("‹ back to the plan");
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(window.shell.currentProperty().get()).isEqualTo("lessons");
  }

  @Test
  void aProblemLeavesEveryRowWhereItIsAndIsSaidInFullBelow(FxRobot robot) {
    robot.interact(() -> session.wish(new Wish("typing", Wish.What.OPEN, made.lesson.id())));
    WaitForAsyncUtils.waitForFxEvents();
    List<Double> before = heights(robot);
    assertThat(before).hasSizeGreaterThanOrEqualTo(4);
    card(robot, "", "", "g", "140", "zip");
    robot.type(KeyCode.LEFT).press(KeyCode.SHIFT).type(KeyCode.TAB).release(KeyCode.SHIFT);
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(heights(robot)).isEqualTo(before);
    TextField broke = (TextField) window.scene.getFocusOwner();
    assertThat(broke.getText()).isEqualTo("zip");
    assertThat(broke.getAccessibleText()).contains("needle thread, bobbin or looper");
    assertThat(broke.getTooltip().getText()).contains("needle thread, bobbin or looper");
    Label here = robot.lookup(".card-here").query();
    assertThat(here.getText()).contains("needle thread, bobbin or looper");
    assertThat(here.getTooltip().getText()).isEqualTo(here.getText());
  }

  private static List<Double> heights(FxRobot robot) {
    return robot.lookup(".card-table .table-row-cell").queryAll().stream()
        .map(row -> row.getLayoutBounds().getHeight())
        .toList();
  }
}
