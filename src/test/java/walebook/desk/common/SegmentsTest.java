package walebook.desk.common;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
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
import walebook.desk.look.Look;
import walebook.desk.look.TextSize;
import walebook.desk.look.Theme;

@ExtendWith(ApplicationExtension.class)
class SegmentsTest {
  private final ObjectProperty<String> chosen = new SimpleObjectProperty<>("one");

  @Start
  void start(Stage stage) {
    Segments<String> segments =
        new Segments<>(List.of("one", "two", "three"), chosen, each -> each);
    Scene scene = new Scene(segments, 400, 100);
    new Look(Theme.LIGHT, TextSize.USUAL).dress(scene);
    stage.setScene(scene);
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

  /** A low line in what people typed is shown, and no sign for a key. */
  @Test
  void whatIsTypedStandsAsItIs(FxRobot robot) {
    assertThat(robot.lookup(".toggle-button").queryAllAs(ToggleButton.class))
        .noneMatch(ToggleButton::isMnemonicParsing);
  }

  /** Whoever presses one part after the other finds each where it was. */
  @Test
  void noButtonMovesWhenAnotherIsChosen(FxRobot robot) {
    List<Double> was = places(robot);
    robot.interact(() -> chosen.set("three"));
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(places(robot)).isEqualTo(was);
    robot.interact(() -> chosen.set("two"));
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(places(robot)).isEqualTo(was);
  }

  private static List<Double> places(FxRobot robot) {
    return robot.lookup(".toggle-button").queryAllAs(ToggleButton.class).stream()
        .flatMap(each -> Stream.of(each.getLayoutX(), each.getWidth()))
        .toList();
  }
}
