package walebook.desk.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCombination;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
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

  @Start
  void start(Stage stage) {
    shell =
        new Shell(
            Words.english(),
            look,
            List.of(place("today", "Today", 1), place("cloths", "Cloths", 2)));
    Scene scene = new Scene(shell, 800, 600);
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
