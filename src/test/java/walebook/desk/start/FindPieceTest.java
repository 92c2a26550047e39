package walebook.desk.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import javafx.scene.Scene;
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
import walebook.desk.look.Look;
import walebook.desk.look.TextSize;
import walebook.desk.look.Theme;
import walebook.desk.shell.FindField;
import walebook.desk.shell.FindViewModel;
import walebook.desk.shell.Shell;
import walebook.quantity.Unit;
import walebook.record.PieceCode;
import walebook.words.Words;

/** From any place, a label typed as a scanner types it opens the piece. */
@ExtendWith(ApplicationExtension.class)
@SuppressWarnings("NullAway.Init")
class FindPieceTest {
  @TempDir static Path folder;

  private PlannedClass made;
  private Places places;
  private Shell shell;
  private Session session;

  @Start
  void start(Stage stage) {
    made = PlannedClass.in(folder.resolve("class.walebook"), 1);
    session = made.session(Worker.sameThread(), PlannedClass.OneFile.NONE);
    session.schoolClassProperty().set(made.room.schoolClass);
    Words words = Words.english();
    Look look = new Look(Theme.LIGHT, TextSize.USUAL);
    places = new Places(session, look, Unit.MM, copy -> {});
    shell = new Shell(words, look, places.entries());
    shell.find(new FindField(words, new FindViewModel(session)));
    session
        .wishProperty()
        .addListener(
            (from, old, now) -> {
              if (now != null) {
                shell.show(now.place());
              }
            });
    Scene scene = new Scene(shell, 1280, 800);
    look.dress(scene);
    stage.setScene(scene);
    stage.show();
  }

  @AfterEach
  void close() {
    WaitForAsyncUtils.waitForAsyncFx(5000, places::rest);
    made.close();
  }

  @Test
  void aScannedCodeOpensTheLogFormOfItsPiece(FxRobot robot) {
    robot.press(KeyCode.CONTROL).type(KeyCode.DIGIT3).release(KeyCode.CONTROL);
    robot.press(KeyCode.CONTROL).type(KeyCode.F).release(KeyCode.CONTROL);
    String code = made.plan.get(2).code();
    robot.write("Q").type(KeyCode.ENTER);
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(shell.currentProperty().get()).isEqualTo("cloths");
    // The next scan types over what was not found.
    robot.write(code).type(KeyCode.ENTER);
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(shell.currentProperty().get()).isEqualTo("pieces");
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
