package walebook.desk.common;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import walebook.words.Words;
import walebook.working.Caution;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Verdict;
import walebook.working.Working;

@ExtendWith(ApplicationExtension.class)
class WorkingPaneTest {
  @SuppressWarnings("NullAway.Init")
  private WorkingPane pane;

  @Start
  void start(Stage stage) {
    pane = new WorkingPane(Words.english());
    stage.setScene(new Scene(pane, 400, 500));
    stage.show();
  }

  @Test
  void showsVerdictSentenceAndCautionAtOnceAndTheStepsWhenUnfolded(FxRobot robot) {
    robot.interact(() -> pane.show(working(Verdict.NOT_MET)));
    assertThat(shown(robot))
        .contains("not met", "Take care: Needle holes: round holes along the seam.")
        .doesNotContain("100 × (150 − 100) ÷ 100 = 50.0 %");
    robot.clickOn(".fold-button");
    assertThat(shown(robot))
        .contains("100 × (150 − 100) ÷ 100 = 50.0 %", "by definition: stretch of cloth");
  }

  @Test
  void staysUnfoldedWhileTheWorkingChanges(FxRobot robot) {
    robot.interact(
        () -> {
          pane.show(working(Verdict.MET));
          pane.openProperty().set(true);
          pane.show(working(Verdict.TOO_CLOSE));
        });
    assertThat(shown(robot)).contains("too close to call", "S = 100 × (L1 − L0) ÷ L0");
    robot.interact(() -> pane.show(null));
    assertThat(shown(robot)).isEmpty();
  }

  private List<String> shown(FxRobot robot) {
    return robot.from(pane).lookup(".label").queryAllAs(Label.class).stream()
        .filter(label -> seen(label))
        .map(Label::getText)
        .toList();
  }

  private static boolean seen(javafx.scene.Node node) {
    for (javafx.scene.Node at = node; at != null; at = at.getParent()) {
      if (!at.isVisible()) {
        return false;
      }
    }
    return true;
  }

  private static Working working(Verdict verdict) {
    return Working.named("stretch", Message.of("drawing.gauge.gave"))
        .step(
            Message.of("drawing.gauge.stretched"),
            "S = 100 × (L1 − L0) ÷ L0",
            "100 × (150 − 100) ÷ 100 = 50.0 %")
        .caution(new Caution("needle", Message.of("drawing.fault.needle-holes")))
        .source(Source.Kind.DEFINITION, "stretch of cloth")
        .verdict(verdict)
        .says(Message.of("drawing.gauge.says-gave", "100 mm", "150 mm", "101 mm"));
  }
}
