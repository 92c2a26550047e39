package walebook.desk.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import walebook.desk.PlannedClass;
import walebook.desk.common.Session;
import walebook.desk.common.Worker;
import walebook.record.PieceCode;

/** From any place, a label typed as a scanner types it opens the piece. */
@ExtendWith(ApplicationExtension.class)
@SuppressWarnings("NullAway.Init")
class FindPieceTest {
  @TempDir static Path folder;

  private PlannedClass made;
  private OpenedWindow window;
  private Session session;

  @Start
  void start(Stage stage) {
    made = PlannedClass.in(folder.resolve("class.walebook"), 1);
    session = made.session(Worker.sameThread(), PlannedClass.OneFile.NONE);
    session.schoolClassProperty().set(made.room.schoolClass);
    window = new OpenedWindow(stage, session);
  }

  @AfterEach
  void close() {
    window.close();
    made.close();
  }

  @Test
  void aScannedCodeOpensTheLogFormOfItsPiece(FxRobot robot) {
    robot.press(KeyCode.CONTROL).type(KeyCode.DIGIT3).release(KeyCode.CONTROL);
    robot.press(KeyCode.CONTROL).type(KeyCode.F).release(KeyCode.CONTROL);
    String code = made.plan.get(2).code();
    robot.write("Q").type(KeyCode.ENTER);
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(window.shell.currentProperty().get()).isEqualTo("cloths");
    // The next scan types over what was not found.
    robot.write(code).type(KeyCode.ENTER);
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(window.shell.currentProperty().get()).isEqualTo("pieces");
    assertThat(session.studentProperty().get()).isEqualTo(made.room.first);
    assertThat(robot.lookup(node -> says(node).contains(PieceCode.spoken(code))).tryQuery())
        .isPresent();
  }

  private static String says(javafx.scene.Node node) {
    return node instanceof javafx.scene.control.Labeled label && label.getText() != null
        ? label.getText()
        : "";
  }
}
