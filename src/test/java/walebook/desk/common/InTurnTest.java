package walebook.desk.common;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javafx.scene.Node;
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
  private final InTurn inTurn = new InTurn(page);

  @Start
  void start(Stage stage) {
    stage.setScene(new Scene(page, 200, 200));
    stage.show();
  }

  private static List<Supplier<Node>> labels(String... texts) {
    return Stream.of(texts).<Supplier<Node>>map(text -> () -> new Label(text)).toList();
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
          inTurn.show(labels("a", "b", "c"));
          assertThat(shown()).containsExactly("a");
        });
    shows("a", "b", "c");
  }

  @Test
  void anotherPageEndsTheOneBefore(FxRobot robot) throws TimeoutException {
    robot.interact(
        () -> {
          inTurn.show(labels("a", "b", "c"));
          inTurn.show(labels("d", "e"));
        });
    shows("d", "e");
    robot.interact(
        () -> {
          inTurn.show(labels("f", "g"));
          inTurn.stop();
        });
    WaitForAsyncUtils.sleep(200, TimeUnit.MILLISECONDS);
    assertThat(shown()).containsExactly("f");
  }
}
