package walebook.desk.common;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.Scene;
import javafx.scene.control.TextArea;
import javafx.scene.input.Clipboard;
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
class ErrorWindowTest {
  private final FaultReport report = FaultReport.of(new IllegalStateException("looper jammed"));
  private int closed;

  @Start
  void start(Stage stage) {
    Look look = new Look(Theme.DARK, TextSize.USUAL);
    ErrorWindow window = new ErrorWindow(Words.english(), look);
    Scene scene = new Scene(window.content(report, () -> closed++), 640, 420);
    look.dress(scene);
    stage.setScene(scene);
    stage.show();
  }

  @Test
  void showsTheCodeAndHandsOverTheDetails(FxRobot robot) {
    assertThat(robot.lookup(".text-area").queryAs(TextArea.class).getText())
        .contains("looper jammed");
    robot.clickOn("Copy details");
    String[] copied = {""};
    robot.interact(() -> copied[0] = Clipboard.getSystemClipboard().getString());
    assertThat(copied[0]).startsWith(report.code()).contains("looper jammed");
    robot.clickOn("Go on");
    assertThat(closed).isEqualTo(1);
  }
}
