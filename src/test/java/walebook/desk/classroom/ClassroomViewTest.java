package walebook.desk.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.util.List;
import javafx.scene.Scene;
import javafx.scene.control.TableView;
import javafx.scene.control.ToggleButton;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import walebook.book.Classroom;
import walebook.desk.RoomBook;
import walebook.desk.Sessions;
import walebook.desk.look.Look;
import walebook.desk.look.TextSize;
import walebook.desk.look.Theme;

/** A part is built when it is first shown, and once: eight at a time would hold up a frame. */
@ExtendWith(ApplicationExtension.class)
class ClassroomViewTest {
  @SuppressWarnings("NullAway.Init")
  private Classroom room;

  @SuppressWarnings("NullAway.Init")
  private ClassroomView view;

  @Start
  void start(Stage stage) throws Exception {
    room = RoomBook.in(Files.createTempDirectory("parts").resolve("room.walebook"));
    Look look = new Look(Theme.LIGHT, TextSize.USUAL);
    view = new ClassroomView(Sessions.of(room), look);
    Scene scene = new Scene(view, 1090, 800);
    look.dress(scene);
    stage.setScene(scene);
    stage.show();
  }

  @AfterEach
  void close() {
    room.close();
  }

  private List<ToggleButton> parts() {
    return view.lookupAll(".segments .toggle-button").stream()
        .map(ToggleButton.class::cast)
        .toList();
  }

  @Test
  void aPartIsBuiltWhenItIsFirstShownAndStaysForTheNextTime(FxRobot robot) {
    assertThat(view.built()).isEqualTo(1);
    List<ToggleButton> parts = parts();
    assertThat(parts).hasSize(8);
    ToggleButton progress = parts.get(0);
    robot.interact(progress::fire);
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(view.built()).isEqualTo(2);
    assertThat(view.lookupAll(".table-view"))
        .anyMatch(each -> !((TableView<?>) each).getItems().isEmpty());
    parts.forEach(each -> robot.interact(each::fire));
    assertThat(view.built()).isEqualTo(8);
    robot.interact(progress::fire);
    assertThat(view.built()).isEqualTo(8);
  }
}
