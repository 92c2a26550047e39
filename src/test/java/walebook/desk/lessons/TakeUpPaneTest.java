package walebook.desk.lessons;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.util.List;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ListCell;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import walebook.book.Classroom;
import walebook.desk.Sessions;
import walebook.desk.common.Fold;
import walebook.lesson.Packs;
import walebook.words.Words;

@ExtendWith(ApplicationExtension.class)
@SuppressWarnings("NullAway.Init")
class TakeUpPaneTest {
  private Classroom room;
  private TakeUpViewModel model;
  private Scene scene;
  private TakeUpPane pane;

  @Start
  void start(Stage stage) throws Exception {
    room = Classroom.in(Files.createTempDirectory("take-up").resolve("a.walebook"));
    model = new TakeUpViewModel(Sessions.of(room), Packs.seam(), taken -> {});
    pane = new TakeUpPane(Words.english(), model, List.of(room.cloth));
    scene = new Scene(new VBox(new Button("before it"), pane), 900, 600);
    stage.setScene(scene);
    stage.show();
  }

  @AfterEach
  void close() {
    room.close();
  }

  /** How a setting is written needs not be known: it is chosen, and stands there once. */
  @Test
  void whatIsLeftOutIsChosen(FxRobot robot) {
    for (String each : List.of("width=3", "width=3", "cloth=b")) {
      robot.interact(() -> boxOf(each).setValue(each));
      robot.interact(() -> {});
    }
    assertThat(model.more(TakeUpViewModel.LEAVE_OUT).text().get()).isEqualTo("width=3\ncloth=b");
    robot.interact(() -> boxOf("overlocker").setValue("overlocker"));
    assertThat(model.more(TakeUpViewModel.WITHOUT).text().get()).isEqualTo("overlocker");
  }

  /** Chosen from the open list, as a person does. */
  @Test
  void theBoxAsksAgainOnceALineIsAdded(FxRobot robot) {
    ComboBox<String> box = boxOf("width=3");
    robot.interact(
        () -> {
          for (Node up = box; up != null; up = up.getParent()) {
            if (up instanceof Fold fold) {
              fold.openProperty().set(true);
            }
          }
        });
    robot.interact(box::requestFocus);
    for (KeyCode again : List.of(KeyCode.DOWN, KeyCode.DOWN)) {
      robot.interact(box::show);
      robot.type(again, KeyCode.DOWN, KeyCode.ENTER);
      robot.interact(() -> {});
      assertThat(model.more(TakeUpViewModel.LEAVE_OUT).text().get()).isNotEmpty();
      assertThat(box.getValue()).isNull();
      assertThat(shown(box)).isEqualTo("choose");
    }
  }

  /** Else who has no mouse is shut in, and names begin with a blank that nobody sees. */
  @Test
  void tabLeavesAFieldOfLines(FxRobot robot) {
    TextArea area =
        inside(pane)
            .filter(TextArea.class::isInstance)
            .map(TextArea.class::cast)
            .findFirst()
            .orElseThrow();
    robot.interact(
        () -> {
          for (Node up = area; up != null; up = up.getParent()) {
            if (up instanceof Fold fold) {
              fold.openProperty().set(true);
            }
          }
          area.requestFocus();
        });
    robot.type(KeyCode.TAB);
    robot.interact(() -> {});
    assertThat(area.getText()).isEmpty();
    assertThat(scene.getFocusOwner()).isNotSameAs(area);
  }

  private static String shown(ComboBox<String> box) {
    return ((ListCell<?>) box.lookup(".list-cell")).getText();
  }

  @SuppressWarnings("unchecked")
  private ComboBox<String> boxOf(String line) {
    return inside(pane)
        .filter(ComboBox.class::isInstance)
        .map(each -> (ComboBox<String>) each)
        .filter(each -> each.getItems().contains(line))
        .findFirst()
        .orElseThrow();
  }

  /** Also what is folded away. */
  private static Stream<Node> inside(Node node) {
    Stream<Node> below =
        node instanceof Parent parent
            ? parent.getChildrenUnmodifiable().stream().flatMap(TakeUpPaneTest::inside)
            : Stream.empty();
    return Stream.concat(Stream.of(node), below);
  }

  @Test
  void typingBeginsWithTheDay(FxRobot robot) {
    robot.interact(() -> {});
    assertThat(scene.getFocusOwner()).isInstanceOf(TextField.class);
    robot.write("2026-12-03");
    assertThat(model.on().text().get()).isEqualTo("2026-12-03");
  }
}
