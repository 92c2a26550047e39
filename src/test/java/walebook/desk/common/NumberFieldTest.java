package walebook.desk.common;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import walebook.desk.look.Look;
import walebook.desk.look.TextSize;
import walebook.desk.look.Theme;
import walebook.quantity.Unit;
import walebook.words.Words;

@ExtendWith(ApplicationExtension.class)
class NumberFieldTest {
  private final Words words = Words.english();
  private final NumberEntry width = NumberEntry.plain("width");
  private final NumberEntry gave = NumberEntry.length(Unit.MM, "gave");

  @SuppressWarnings("NullAway.Init")
  private NumberField first;

  @SuppressWarnings("NullAway.Init")
  private NumberField second;

  @Start
  void start(Stage stage) {
    first = new NumberField(words, "width, mm", "2.5", width);
    second = new NumberField(words, "gave at, mm", "150", gave);
    Scene scene = new Scene(new FieldGroup("The machine", first, second), 600, 300);
    new Look(Theme.LIGHT, TextSize.USUAL).dress(scene);
    stage.setScene(scene);
    stage.show();
    first.field().requestFocus();
  }

  @Test
  void keepsWhatWasTypedAndShowsTheProblemBelow(FxRobot robot) {
    robot.clickOn(first.field()).write("2x5").type(KeyCode.ENTER);
    assertThat(first.field().getText()).isEqualTo("2x5");
    assertThat(first.problemShown()).isNotEmpty();
    assertThat(first.field().getAccessibleText()).startsWith("width, mm").contains(".");
    robot.interact(() -> first.field().requestFocus());
    robot.type(KeyCode.END).eraseText(2);
    assertThat(first.problemShown()).isEmpty();
    assertThat(width.value()).isEqualTo(2.0);
  }

  @Test
  void enterMovesOnToTheNextField(FxRobot robot) {
    robot.clickOn(first.field()).write("2,5").type(KeyCode.ENTER);
    assertThat(second.field().isFocused()).isTrue();
    robot.write("5 cm").type(KeyCode.TAB);
    assertThat(gave.value()).isEqualTo(50.0);
    assertThat(width.value()).isEqualTo(2.5);
  }

  @Test
  void isTallEnoughToHit() {
    assertThat(first.field().getHeight()).isGreaterThanOrEqualTo(36);
    assertThat(first.field().getAccessibleText()).isEqualTo("width, mm");
  }
}
