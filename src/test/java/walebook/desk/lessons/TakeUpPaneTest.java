package walebook.desk.lessons;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.util.List;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
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
import walebook.lesson.Packs;
import walebook.words.Words;

@ExtendWith(ApplicationExtension.class)
@SuppressWarnings("NullAway.Init")
class TakeUpPaneTest {
  private Classroom room;
  private TakeUpViewModel model;
  private Scene scene;

  @Start
  void start(Stage stage) throws Exception {
    room = Classroom.in(Files.createTempDirectory("take-up").resolve("a.walebook"));
    model = new TakeUpViewModel(Sessions.of(room), Packs.seam(), taken -> {});
    TakeUpPane pane = new TakeUpPane(Words.english(), model, List.of(room.cloth));
    scene = new Scene(new VBox(new Button("before it"), pane), 900, 600);
    stage.setScene(scene);
    stage.show();
  }

  @AfterEach
  void close() {
    room.close();
  }

  @Test
  void typingBeginsWithTheDay(FxRobot robot) {
    robot.interact(() -> {});
    assertThat(scene.getFocusOwner()).isInstanceOf(TextField.class);
    robot.write("2026-12-03");
    assertThat(model.on().text().get()).isEqualTo("2026-12-03");
  }
}
