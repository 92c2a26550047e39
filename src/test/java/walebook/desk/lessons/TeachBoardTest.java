package walebook.desk.lessons;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import walebook.act.lesson.ReadLessons;
import walebook.act.lesson.RoomCalculations;
import walebook.book.Classroom;
import walebook.desk.common.ChoiceWords;
import walebook.desk.look.Look;
import walebook.desk.look.TextSize;
import walebook.desk.look.Theme;
import walebook.lesson.LessonPack;
import walebook.quantity.Unit;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** The lesson on the board, led by the keys of a clicker and worked with by those of the board. */
@ExtendWith(ApplicationExtension.class)
@SuppressWarnings("NullAway.Init")
class TeachBoardTest {
  private final Look look = new Look(Theme.LIGHT, TextSize.USUAL);
  private TeachViewModel model;
  private Stage board;

  @Start
  void start(Stage stage) {
    Words words = Words.english();
    SharedTables tables = SharedTables.read();
    LessonPack pack = ReadLessons.packs().get(0);
    model =
        new TeachViewModel(
            pack,
            words,
            Classroom.CLOCK,
            new CalledOutViewModel(RoomCalculations.of(pack, tables), words, Unit.MM));
    stage.setScene(new Scene(new Label(), 1280, 800));
    stage.show();
    board = TeachBoard.show(words, look, new ChoiceWords(words, tables), stage, model);
  }

  private void press(FxRobot robot, KeyCode... keys) {
    for (KeyCode key : keys) {
      robot.type(key);
      WaitForAsyncUtils.waitForFxEvents();
    }
  }

  @Test
  void aClickersTwoKeysLeadThroughAllThatStandsOnTheBoard(FxRobot robot) {
    int pages = 0;
    int seen = 1;
    while (seen < 9 && pages++ < 60) {
      int before = model.placeProperty().get();
      press(robot, KeyCode.PAGE_DOWN);
      if (model.placeProperty().get() > before) {
        seen++;
      } else {
        ScrollPane text = robot.lookup(".teach-step > .scroll-pane").queryAs(ScrollPane.class);
        assertThat(text.getVvalue()).isPositive();
      }
    }
    assertThat(seen).isEqualTo(9);
    press(robot, KeyCode.HOME, KeyCode.END, KeyCode.HOME, KeyCode.SPACE, KeyCode.LEFT);
    assertThat(model.placeProperty().get()).isZero();
  }

  @Test
  void numbersCalledOutAreTypedWorkedAndKept(FxRobot robot) {
    press(robot, KeyCode.C);
    robot.targetWindow(board).write("150");
    press(robot, KeyCode.ENTER);
    assertThat(robot.lookup("100 × (150 − 100) ÷ 100 = 50.0 %").tryQuery()).isPresent();
    robot.press(KeyCode.CONTROL).type(KeyCode.ENTER).release(KeyCode.CONTROL);
    WaitForAsyncUtils.waitForFxEvents();
    robot.write("140");
    robot.press(KeyCode.CONTROL).type(KeyCode.ENTER).release(KeyCode.CONTROL);
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(model.calledOut().called()).containsExactly("50 %", "40 %");
    press(robot, KeyCode.ESCAPE, KeyCode.G);
    assertThat(model.asideProperty().get()).isTrue();
    press(robot, KeyCode.ESCAPE);
    assertThat(board.isShowing()).isTrue();
    press(robot, KeyCode.ESCAPE);
    assertThat(board.isShowing()).isFalse();
  }

  @Test
  void withTheLargestLettersTheAnswerAndTheKeysStandOnTheBoard(FxRobot robot) {
    robot.interact(() -> look.textSizeProperty().set(new TextSize(200)));
    press(robot, KeyCode.C);
    robot.targetWindow(board).write("150");
    press(robot, KeyCode.ENTER);
    assertStands(robot, "100 × (150 − 100) ÷ 100 = 50.0 %");
    Labeled keys = robot.lookup(".teach-keys").query();
    assertStands(robot, keys.getText());
    // A label of the fields is no smaller than body text at twice its size, 30 pixels.
    Labeled label = robot.lookup(".called-number .field-label").query();
    assertThat(label.getFont().getSize()).isGreaterThanOrEqualTo(29.9);
  }

  private void assertStands(FxRobot robot, String text) {
    Node shown = robot.lookup(text).query();
    Bounds at = shown.localToScene(shown.getLayoutBounds());
    assertThat(at.getMinY()).as(text).isNotNegative();
    assertThat(at.getMaxY()).as(text).isLessThanOrEqualTo(board.getScene().getHeight());
    assertThat(at.getMaxX()).as(text).isLessThanOrEqualTo(board.getScene().getWidth());
  }
}
