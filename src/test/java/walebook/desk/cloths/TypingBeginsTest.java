package walebook.desk.cloths;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import javafx.scene.Scene;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import walebook.book.Classroom;
import walebook.desk.Sessions;
import walebook.desk.common.Session;
import walebook.desk.common.Wish;
import walebook.words.Words;

/** What is typed right after a form was opened, or a reading saved, lands in its field. */
@ExtendWith(ApplicationExtension.class)
@SuppressWarnings("NullAway.Init")
class TypingBeginsTest {
  private static final Words WORDS = Words.english();

  private Classroom room;
  private Scene scene;

  @Start
  void start(Stage stage) throws Exception {
    room = Classroom.in(Files.createTempDirectory("typing").resolve("a.walebook"));
    Session session = Sessions.of(room);
    scene = new Scene(new ClothsView(session), 1090, 800);
    stage.setScene(scene);
    stage.show();
    session.wish(new Wish("cloths", Wish.What.OPEN, room.cloth.id()));
  }

  @AfterEach
  void close() {
    room.close();
  }

  private void press(FxRobot robot, String key) {
    robot.clickOn(WORDS.say(key));
    WaitForAsyncUtils.waitForFxEvents();
  }

  private String focused() {
    return scene.getFocusOwner() instanceof TextInputControl field
        ? field.getAccessibleText()
        : String.valueOf(scene.getFocusOwner());
  }

  @Test
  void theNextReadingCanBeTypedAtOnce(FxRobot robot) {
    press(robot, "desk.cloths.measure");
    String stretched = WORDS.say("desk.cloths.field.stretched", "mm");
    assertThat(focused()).isEqualTo(stretched);
    robot.write("150").type(KeyCode.ENTER, KeyCode.ENTER).write("30");
    robot.press(KeyCode.CONTROL).type(KeyCode.S).release(KeyCode.CONTROL);
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(room.book.clothLog().readingsOf(room.cloth.id())).hasSize(1);
    assertThat(focused()).isEqualTo(stretched);
  }

  @Test
  void theCardBeginsWithItsName(FxRobot robot) {
    press(robot, "desk.cloths.edit");
    assertThat(focused()).isEqualTo(WORDS.say("desk.cloths.field.cloth-name", ""));
  }

  /** Whether an edge frays is looked at; what a cloth is and whether it is used are not. */
  @Test
  void onlyWhatIsLookedAtSaysThatItWasNotYet(FxRobot robot) {
    press(robot, "desk.cloths.back-list");
    press(robot, "desk.cloths.add");
    assertThat(shown("desk.cloths.field.cloth-kind")).isEqualTo("not known yet");
    assertThat(shown("desk.cloths.field.retired")).isEqualTo("no");
    assertThat(shown("desk.cloths.field.frays")).isEqualTo("not looked at yet");
  }

  private String shown(String key) {
    return scene.getRoot().lookupAll(".combo-box").stream()
        .map(each -> (ComboBox<?>) each)
        .filter(each -> WORDS.say(key, "").equals(each.getAccessibleText()))
        .map(TypingBeginsTest::says)
        .findFirst()
        .orElseThrow();
  }

  private static <T> String says(ComboBox<T> box) {
    return box.getConverter().toString(box.getValue());
  }
}
