package walebook.desk.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.scene.Scene;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCombination;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import walebook.book.Classroom;
import walebook.book.PieceFilter;
import walebook.desk.Sessions;
import walebook.desk.common.Session;
import walebook.desk.look.Look;
import walebook.desk.look.TextSize;
import walebook.desk.look.Theme;
import walebook.record.SeamEnd;
import walebook.words.Words;

/** The keys of undo and redo in a field that the program filled in. */
@ExtendWith(ApplicationExtension.class)
@SuppressWarnings("NullAway.Init")
class StepsKeysTest {
  @TempDir static Path folder;

  private final StringProperty first = new SimpleStringProperty("");
  private final StringProperty second = new SimpleStringProperty("");
  private Classroom room;
  private Session session;

  @Start
  void start(Stage stage) {
    room = Classroom.in(folder.resolve(System.nanoTime() + ".walebook"));
    session = Sessions.of(room);
    room.book.pieces().add(room.piece(SeamEnd.GAVE, 140));
    VBox form = new VBox(field("first", first), field("second", second));
    Shell shell =
        new Shell(
            Words.english(),
            new Look(Theme.LIGHT, TextSize.USUAL),
            List.of(
                new PlaceEntry(
                    "form", "Form", KeyCombination.keyCombination("Ctrl+1"), () -> form)));
    shell.steps(new StepsBar(Words.english(), new StepsViewModel(session)));
    stage.setScene(new Scene(shell, 800, 600));
    stage.show();
  }

  private static TextField field(String id, StringProperty text) {
    TextField field = new TextField();
    field.setId(id);
    field.textProperty().bindBidirectional(text);
    return field;
  }

  @AfterEach
  void close() {
    room.close();
  }

  private void undo(FxRobot robot) {
    robot.press(KeyCode.CONTROL).type(KeyCode.Z).release(KeyCode.CONTROL);
  }

  private int pieces() {
    return room.book.pieces().list(PieceFilter.ALL).size();
  }

  @Test
  void whatTheFormFilledInStaysAndTheStepIsTakenBack(FxRobot robot) {
    robot.clickOn("#first").interact(() -> first.set("204"));
    undo(robot);
    assertThat(first.get()).isEqualTo("204");
    assertThat(pieces()).isZero();
    robot.press(KeyCode.CONTROL, KeyCode.SHIFT).type(KeyCode.Z);
    robot.release(KeyCode.CONTROL, KeyCode.SHIFT);
    assertThat(pieces()).isEqualTo(1);
    assertThat(first.get()).isEqualTo("204");
  }

  @Test
  void whatWasTypedIsTakenBackFirstAndNoFurther(FxRobot robot) {
    robot.interact(() -> second.set("202"));
    robot.clickOn("#second").press(KeyCode.CONTROL).type(KeyCode.A).release(KeyCode.CONTROL);
    robot.type(KeyCode.DIGIT9);
    assertThat(second.get()).isEqualTo("9");
    undo(robot);
    assertThat(second.get()).isEqualTo("202");
    assertThat(pieces()).isEqualTo(1);
    undo(robot);
    assertThat(second.get()).isEqualTo("202");
    assertThat(pieces()).isZero();
  }

  @Test
  void typingInAFieldLeftMeanwhileIsStillTakenBack(FxRobot robot) {
    robot.clickOn("#first").type(KeyCode.DIGIT7);
    robot.clickOn("#second").clickOn("#first");
    undo(robot);
    assertThat(first.get()).isEmpty();
    assertThat(pieces()).isEqualTo(1);
  }
}
