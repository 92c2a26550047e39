package walebook.desk.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCombination;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import walebook.desk.PlannedClass;
import walebook.desk.common.Session;
import walebook.desk.common.Worker;
import walebook.desk.look.Look;
import walebook.desk.look.TextSize;
import walebook.desk.look.Theme;
import walebook.words.Words;

@ExtendWith(ApplicationExtension.class)
class ShellTest {
  private final List<String> built = new ArrayList<>();
  private final Look look = new Look(Theme.LIGHT, TextSize.USUAL);

  @SuppressWarnings("NullAway.Init")
  private Shell shell;

  @TempDir static Path folder;

  @SuppressWarnings("NullAway.Init")
  private PlannedClass made;

  @AfterEach
  void close() throws IOException {
    made.close();
    Files.delete(folder.resolve("class.walebook"));
  }

  @Start
  void start(Stage stage) {
    shell =
        new Shell(
            Words.english(),
            look,
            List.of(
                place("today", "Today", 1),
                place("cloths", "Cloths", 2),
                place("pieces", "Test pieces", 3),
                place("decide", "Decide", 4),
                place("lessons", "Lessons", 5),
                place("class", "Class", 6),
                place("term", "Term record", 7),
                place("settings", "Settings", 8)));
    shell.bookName("Evening class of the harbour hall, spring and summer");

    made = PlannedClass.in(folder.resolve("class.walebook"), 1);
    Session session = made.session(Worker.sameThread(), PlannedClass.OneFile.NONE);
    shell.find(new FindField(Words.english(), new FindViewModel(session)));
    Scene scene = new Scene(shell, 1280, 800);
    look.dress(scene);
    stage.setScene(scene);
    stage.show();
  }

  @Test
  void buildsAPlaceOnceWhenItIsFirstShown(FxRobot robot) {
    assertThat(built).containsExactly("today");
    robot.clickOn("Cloths");
    assertThat(shell.currentProperty().get()).isEqualTo("cloths");
    robot.clickOn("Today").clickOn("Cloths");
    assertThat(built).containsExactly("today", "cloths");
  }

  @Test
  void keysLeadToThePlaces(FxRobot robot) {
    robot.press(KeyCode.CONTROL).type(KeyCode.DIGIT2).release(KeyCode.CONTROL);
    assertThat(shell.currentProperty().get()).isEqualTo("cloths");
  }

  @Test
  void changesThemeAndTextSizeFromTheWindow(FxRobot robot) {
    robot.clickOn("Dark screen");
    assertThat(look.theme()).isEqualTo(Theme.DARK);
    robot.clickOn("A+");
    assertThat(look.textSize().percent()).isEqualTo(110);
    robot.clickOn("A−").clickOn("A−");
    assertThat(look.textSize().percent()).isEqualTo(100);
  }

  @Test
  void keysChangeTextSizeAndTheme(FxRobot robot) {
    robot.press(KeyCode.CONTROL).type(KeyCode.EQUALS).type(KeyCode.ADD).release(KeyCode.CONTROL);
    assertThat(look.textSize().percent()).isEqualTo(120);
    robot.press(KeyCode.CONTROL).type(KeyCode.MINUS).release(KeyCode.CONTROL);
    assertThat(look.textSize().percent()).isEqualTo(110);
    robot.press(KeyCode.CONTROL, KeyCode.SHIFT).type(KeyCode.D);
    robot.release(KeyCode.CONTROL, KeyCode.SHIFT);
    assertThat(look.theme()).isEqualTo(Theme.DARK);
  }

  @Test
  void settingsAndAllPlacesStayInReachWithTheLargestLetters(FxRobot robot) {
    robot.interact(() -> look.textSizeProperty().set(new TextSize(200)));
    Bounds window = shell.getLayoutBounds();
    for (String id : List.of("#text-smaller", "#text-larger", "#other-theme")) {
      Node button = robot.lookup(id).query();
      assertThat(window.contains(button.localToScene(button.getLayoutBounds()))).as(id).isTrue();
    }
    robot.clickOn("#text-smaller");
    assertThat(look.textSize().percent()).isEqualTo(190);
    Node bar = robot.lookup(".shell-settings").query();
    double foot = bar.localToScene(bar.getLayoutBounds()).getMinY();
    List<Node> buttons = new ArrayList<>(robot.lookup(".place-button").queryAll());
    assertThat(buttons).hasSize(8);
    for (Node button : buttons) {
      Bounds at = button.localToScene(button.getLayoutBounds());
      assertThat(at.getMaxY()).as(button.toString()).isLessThanOrEqualTo(foot);
      robot.clickOn(button);
      assertThat(((ToggleButton) button).isSelected()).as(button.toString()).isTrue();
    }
  }

  private PlaceEntry place(String key, String title, int digit) {
    KeyCombination keys = KeyCombination.keyCombination("Ctrl+" + digit);
    return new PlaceEntry(
        key,
        title,
        keys,
        () -> {
          built.add(key);
          return new Label(title + " is here");
        });
  }
}
