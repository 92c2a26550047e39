package walebook.desk.common;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;
import javafx.animation.AnimationTimer;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

@ExtendWith(ApplicationExtension.class)
class InTurnTest {
  private final VBox page = new VBox();
  private final InTurn inTurn = new InTurn();
  private final List<Long> frames = new ArrayList<>();
  private final AnimationTimer clock =
      new AnimationTimer() {
        @Override
        public void handle(long now) {
          frames.add(now);
        }
      };

  @Start
  void start(Stage stage) {
    stage.setScene(new Scene(page, 200, 200));
    stage.show();
    clock.start();
  }

  /** Steps that put a label each on the page. */
  private List<Runnable> labels(String... texts) {
    return Stream.of(texts)
        .<Runnable>map(text -> () -> page.getChildren().add(new Label(text)))
        .toList();
  }

  private List<String> shown() {
    return page.getChildren().stream().map(each -> ((Label) each).getText()).toList();
  }

  private void shows(String... texts) throws TimeoutException {
    WaitForAsyncUtils.waitFor(5, TimeUnit.SECONDS, () -> page.getChildren().size() == texts.length);
    assertThat(shown()).containsExactly(texts);
  }

  @Test
  void theFirstComesAtOnceAndTheOthersFollowInOrder(FxRobot robot) throws TimeoutException {
    robot.interact(
        () -> {
          inTurn.run(this, labels("a", "b", "c"));
          assertThat(shown()).containsExactly("a");
        });
    shows("a", "b", "c");
  }

  @Test
  void noTwoStepsShareAFrame(FxRobot robot) throws TimeoutException {
    List<Integer> at = new ArrayList<>();
    Runnable step = () -> at.add(frames.size());
    robot.interact(() -> inTurn.run(this, List.of(step, step, step)));
    WaitForAsyncUtils.waitFor(5, TimeUnit.SECONDS, () -> at.size() == 3);
    // The first was done before its frame began, the second in the next one.
    assertThat(at.get(1) - at.get(0)).isGreaterThanOrEqualTo(2);
    assertThat(at.get(2)).isGreaterThan(at.get(1));
  }

  @Test
  void otherStepsOfTheSamePartEndTheOnesBefore(FxRobot robot) throws TimeoutException {
    robot.interact(
        () -> {
          inTurn.run(this, labels("a", "b", "c"));
          inTurn.run(this, labels("d", "e"));
        });
    shows("a", "d", "e");
    robot.interact(
        () -> {
          page.getChildren().clear();
          inTurn.run(this, labels("f", "g"));
          inTurn.stop(this);
        });
    WaitForAsyncUtils.sleep(200, TimeUnit.MILLISECONDS);
    assertThat(shown()).isSubsetOf("f");
  }

  @Test
  void partsThatShareOneWaitForEachOther(FxRobot robot) throws TimeoutException {
    robot.interact(
        () -> {
          inTurn.run("first", labels("a", "b"));
          inTurn.run("second", labels("c", "d"));
          assertThat(shown()).containsExactly("a");
        });
    shows("a", "b", "c", "d");
  }
}
