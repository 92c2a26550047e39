package walebook.desk.common;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.Scene;
import javafx.scene.control.TextField;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
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
class FieldGroupTest {
  private static final int WIDE = 900;

  private final Look look = new Look(Theme.LIGHT, TextSize.USUAL);

  // Made with the stage: controls need the toolkit, which may not run before.
  @SuppressWarnings("NullAway.Init")
  private FieldBox remark;

  @SuppressWarnings("NullAway.Init")
  private PlaceFrame frame;

  @Start
  void start(Stage stage) {
    remark = new FieldBox(Words.english(), "remark", new TextField());
    FieldGroup group = new FieldGroup("sewing").add(new Region(), 12).add(remark, 30);
    frame = new PlaceFrame(Words.english(), "Garment sheet").work(new VBox(group));
    Scene scene = new Scene(frame, WIDE, 600);
    look.dress(scene);
    stage.setScene(scene);
    stage.show();
  }

  @Test
  void aWideFieldStaysInTheWindowWithLargeLetters(FxRobot robot) {
    assertThat(remark.getWidth()).isEqualTo(30 * TextSize.BODY_PX);
    robot.interact(() -> look.textSizeProperty().set(new TextSize(200)));
    robot.interact(() -> {});
    assertThat(remark.localToScene(remark.getBoundsInLocal()).getMaxX()).isLessThan(WIDE);
    assertThat(remark.getWidth()).isGreaterThan(WIDE / 2.0);
  }
}
