package walebook.desk.common;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Scene;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

@ExtendWith(ApplicationExtension.class)
class SegmentsTest {
  private final ObjectProperty<String> chosen = new SimpleObjectProperty<>("one");

  @Start
  void start(Stage stage) {
    Segments<String> segments =
        new Segments<>(List.of("one", "two", "three"), chosen, each -> each);
    stage.setScene(new Scene(segments, 400, 100));
    stage.show();
  }

  @Test
  void whatIsChosenFollowsTheArrowKeysAndOneIsAlwaysDown(FxRobot robot) {
    List<ToggleButton> buttons =
        List.copyOf(robot.lookup(".toggle-button").queryAllAs(ToggleButton.class));
    robot.interact(() -> buttons.get(0).requestFocus());
    robot.type(KeyCode.RIGHT);
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(chosen.get()).isEqualTo("two");
    assertThat(buttons).extracting(ToggleButton::isSelected).containsExactly(false, true, false);
    robot.type(KeyCode.SPACE);
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(chosen.get()).isEqualTo("two");
    assertThat(buttons.get(1).isSelected()).isTrue();
    robot.interact(() -> chosen.set("three"));
    assertThat(buttons).extracting(ToggleButton::isSelected).containsExactly(false, false, true);
  }
}
