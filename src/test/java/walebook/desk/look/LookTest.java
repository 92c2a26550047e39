package walebook.desk.look;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

@SuppressWarnings("NullAway.Init")
@ExtendWith(ApplicationExtension.class)
class LookTest {
  private final Look look = new Look(Theme.LIGHT, TextSize.USUAL);

  // No control can be made before the toolkit runs.
  private Label label;
  private Button button;

  @Start
  void start(Stage stage) {
    label = new Label("1 l I 0 O");
    button = new Button("Save");
    Scene scene = new Scene(new VBox(label, button), 400, 300);
    look.dress(scene);
    stage.setScene(scene);
    stage.show();
  }

  @Test
  void everythingIsSetInTheProgramsOwnFontAndGrows(FxRobot robot) {
    assertThat(label.getFont().getFamily()).isEqualTo("Atkinson Hyperlegible Next");
    assertThat(label.getFont().getSize()).isEqualTo(15);
    double usual = button.getHeight();
    assertThat(usual).isGreaterThanOrEqualTo(32);
    robot.interact(() -> look.textSizeProperty().set(new TextSize(200)));
    assertThat(label.getFont().getSize()).isEqualTo(30);
    assertThat(button.getHeight()).isGreaterThanOrEqualTo(2 * usual);
  }

  @Test
  void theTextSizeStopsAtItsEnds() {
    assertThat(TextSize.USUAL.smaller()).isEqualTo(TextSize.USUAL);
    assertThat(new TextSize(200).larger().percent()).isEqualTo(200);
    assertThatThrownBy(() -> new TextSize(90)).hasMessageContaining("percent");
  }
}
