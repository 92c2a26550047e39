package walebook.desk.common;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.scene.image.Image;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.paint.Color;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import walebook.desk.look.Look;
import walebook.desk.look.TextSize;
import walebook.desk.look.Theme;
import walebook.drawing.Drawing;
import walebook.drawing.IntervalBar;
import walebook.drawing.Picture;
import walebook.drawing.Role;
import walebook.words.Words;

@ExtendWith(ApplicationExtension.class)
class PicturePaneTest {
  private final Look look = new Look(Theme.LIGHT, TextSize.USUAL);

  @SuppressWarnings("NullAway.Init")
  private PicturePane pane;

  @Start
  void start(Stage stage) {
    pane = new PicturePane(Words.english(), new IntervalBar(7, 9, 45.3, 93.7));
    Scene scene = new Scene(new VBox(pane), 500, 300);
    look.dress(scene);
    stage.setScene(scene);
    stage.show();
  }

  @Test
  void tellsInWordsWhatItShows() {
    assertThat(pane.getAccessibleText())
        .isEqualTo("7 of 9, 78 %; the interval reaches from 45 to 94 %.");
  }

  @Test
  void followsThemeAndTextSize(FxRobot robot) {
    double usual = pane.getHeight();
    for (Theme theme : Theme.values()) {
      robot.interact(() -> look.themeProperty().set(theme));
      Image image = snapshot(robot);
      assertThat(image).isNotNull();
      Color corner = image.getPixelReader().getColor(0, 0);
      assertThat(corner).isEqualTo(Color.web(theme.palette().colour(Role.CARD)));
    }
    robot.interact(() -> look.textSizeProperty().set(new TextSize(200)));
    assertThat(pane.getHeight()).isEqualTo(2 * usual);
  }

  /** A page asks for its height with and without its bar, and does so with every layout. */
  @Test
  void itIsDrawnOnceForEachOfTwoWidths(FxRobot robot) {
    List<Double> drawn = new ArrayList<>();
    IntervalBar bar = new IntervalBar(7, 9, 45.3, 93.7);
    Drawing counting =
        new Drawing() {
          @Override
          public double leastWidth() {
            return bar.leastWidth();
          }

          @Override
          public Picture at(double width, Words words) {
            drawn.add(width);
            return bar.at(width, words);
          }
        };
    robot.interact(
        () -> {
          PicturePane other = new PicturePane(Words.english(), counting);
          for (int i = 0; i < 5; i++) {
            other.prefHeight(300);
            other.prefHeight(285);
          }
        });
    assertThat(drawn).containsExactly(300.0, 285.0);
  }

  /** What is painted shows in the size of the canvas inside. */
  @Test
  void whatLiesBelowTheWindowIsPaintedOnceItIsScrolledTo(FxRobot robot) {
    PicturePane below = new PicturePane(Words.english(), new IntervalBar(1, 2, 9.5, 90.5));
    Region high = new Region();
    high.setMinHeight(2000);
    ScrollPane scroll = new ScrollPane(new VBox(high, below));
    scroll.setFitToWidth(true);
    robot.interact(() -> pane.getScene().setRoot(scroll));
    assertThat(below.getHeight()).isPositive();
    assertThat(below.getAccessibleText()).startsWith("1 of 2");
    assertThat(painted(below)).isFalse();
    robot.interact(() -> scroll.setVvalue(1));
    assertThat(painted(below)).isTrue();
    robot.interact(() -> below.show(new IntervalBar(3, 4, 30, 95)));
    assertThat(below.getAccessibleText()).startsWith("3 of 4");
    robot.interact(() -> scroll.setVvalue(0));
    robot.interact(() -> scroll.setContent(new VBox(below, high)));
    assertThat(painted(below)).isTrue();
  }

  private static boolean painted(PicturePane pane) {
    return pane.getChildrenUnmodifiable().get(0).getLayoutBounds().getWidth() > 0;
  }

  private Image snapshot(FxRobot robot) {
    Image[] taken = new Image[1];
    robot.interact(() -> taken[0] = pane.image());
    return taken[0];
  }
}
