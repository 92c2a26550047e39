package walebook.desk.common;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import walebook.act.book.BackUpBook;
import walebook.book.BookCopy;
import walebook.book.Classroom;
import walebook.book.open.SqliteCare;
import walebook.desk.Sessions;

@ExtendWith(ApplicationExtension.class)
@SuppressWarnings("NullAway.Init")
class BackupsPaneTest {
  @TempDir static Path folder;

  private Classroom room;
  private StackPane place;
  private BackupsPane pane;

  @Start
  void start(Stage stage) throws IOException {
    room = Classroom.in(Files.createTempDirectory(folder, "book").resolve("a.walebook"));
    Session session = Sessions.of(room);
    pane = new BackupsPane(session.words(), Sessions.backups(session), /* withMaking= */ true);
    place = new StackPane(pane);
    stage.setScene(new Scene(place, 900, 600));
    stage.show();
  }

  @AfterEach
  void close() {
    room.close();
  }

  /** A book just made has none yet, and one made while another place was shown is listed. */
  @Test
  void saysWhenTheFirstComesAndListsWhatCameMeanwhile(FxRobot robot) {
    assertThat(said(robot)).anyMatch(each -> each.contains("first backup after 20 minutes"));
    robot.interact(() -> place.getChildren().setAll(new Label("another place")));
    new BackUpBook(new SqliteCare(), Classroom.CLOCK)
        .now(room.book.file(), BookCopy.Why.ROUTINE, null)
        .value();
    robot.interact(() -> place.getChildren().setAll(pane));
    assertThat(said(robot))
        .anyMatch(each -> each.contains("2026-10-05 18:30"))
        .noneMatch(each -> each.contains("None yet"));
  }

  private List<String> said(FxRobot robot) {
    return robot.from(pane).lookup((Node each) -> each instanceof Labeled).queryAll().stream()
        .map(each -> ((Labeled) each).getText())
        .toList();
  }
}
