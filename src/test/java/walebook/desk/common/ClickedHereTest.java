package walebook.desk.common;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Scene;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** A double click belongs to what its first click fell on. */
@ExtendWith(ApplicationExtension.class)
@SuppressWarnings("NullAway.Init")
class ClickedHereTest {
  private final List<Boolean> ticked = new ArrayList<>();
  private StackPane place;
  private CheckBox box;

  @Start
  void start(Stage stage) {
    box = new CheckBox("speaks for it");
    box.setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
    box.setOnAction(pressed -> ticked.add(box.isSelected()));
    Label row = new Label("the row");
    row.setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
    place = new StackPane(row);
    ClickedHere clicked = ClickedHere.watch(place);
    row.setOnMouseClicked(
        click -> {
          clicked.isOther();
          place.getChildren().setAll(box);
        });
    stage.setScene(new Scene(place, 300, 200));
    stage.show();
  }

  @Test
  void theSecondClickDoesNotReachWhatTheFirstBroughtUp(FxRobot robot) {
    robot.doubleClickOn(place);
    assertThat(place.getChildren()).containsExactly(box);
    assertThat(ticked).isEmpty();
    robot.sleep(700);
    robot.clickOn(place);
    assertThat(ticked).containsExactly(true);
  }
}
