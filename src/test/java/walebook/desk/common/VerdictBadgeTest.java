package walebook.desk.common;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
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
import walebook.working.Verdict;

@ExtendWith(ApplicationExtension.class)
@SuppressWarnings("NullAway.Init")
class VerdictBadgeTest {
  private static final String LONGEST = "common.verdict.met-reckoned";

  private VerdictBadge badge;
  private VerdictBadge shortest;

  @Start
  void start(Stage stage) {
    Words words = Words.english();
    badge = new VerdictBadge(words, Verdict.MET, true);
    shortest = new VerdictBadge(words, Verdict.MET);
    VBox card = new VBox(4, badge, shortest);
    card.getStyleClass().add("answer");
    ScrollPane scroll = new ScrollPane(new VBox(card));
    scroll.setFitToWidth(true);
    Scene scene = new Scene(scroll, 290, 120);
    new Look(Theme.LIGHT, TextSize.USUAL).dress(scene);
    stage.setScene(scene);
    stage.show();
  }

  @Test
  void aLongWordGoesOnInTheNextLineAndTheMarkKeepsItsSize(FxRobot robot) {
    Region mark = (Region) badge.getChildren().get(0);
    Region other = (Region) shortest.getChildren().get(0);
    assertThat(mark.getWidth()).isEqualTo(other.getWidth());
    Label word = robot.from(badge).lookup(".verdict-word").query();
    Text drawn = (Text) word.lookup(".text");
    assertThat(drawn.getText()).isEqualTo(Words.english().say(LONGEST));
    assertThat(word.getHeight()).isGreaterThan(20);
  }
}
