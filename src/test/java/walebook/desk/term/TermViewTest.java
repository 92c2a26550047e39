package walebook.desk.term;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Objects;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.TextInputControl;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.book.open.SqliteFiles;
import walebook.desk.Sessions;
import walebook.desk.look.Look;
import walebook.desk.look.TextSize;
import walebook.desk.look.Theme;
import walebook.quantity.Unit;

/** In a new book a class is begun; the one who does it may press twice. */
@ExtendWith(ApplicationExtension.class)
@SuppressWarnings("NullAway.Init")
class TermViewTest {
  @TempDir static Path folder;

  private Book book;
  private TermView view;

  @Start
  void start(Stage stage) {
    book =
        new SqliteFiles()
            .make(folder.resolve("new.walebook"), "New", false, Unit.MM, Classroom.CLOCK)
            .value();
    view = new TermView(Sessions.of(book), new SqliteFiles());
    Scene scene = new Scene(view, 1090, 800);
    new Look(Theme.LIGHT, TextSize.USUAL).dress(scene);
    stage.setScene(scene);
    stage.show();
  }

  @AfterEach
  void close() {
    book.close();
  }

  private Button button(String text) {
    return view.lookupAll(".button").stream()
        .filter(each -> each instanceof Button button && text.equals(button.getText()))
        .map(Button.class::cast)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aSecondPressWhereTheClassWasBegunOpensNoOther(FxRobot robot) {
    TextInputControl name =
        (TextInputControl) Objects.requireNonNull(view.lookup(".place-work .text-field"));
    robot.interact(() -> name.setText("Quay class"));
    Node begin = button("Start the class");
    var at = begin.localToScene(begin.getBoundsInLocal());
    robot.interact(() -> button("Start the class").fire());
    robot.interact(view::layout);
    assertThat(book.classes().all()).hasSize(1);
    Node other = button("Start another class");
    assertThat(other.localToScene(other.getBoundsInLocal()).intersects(at)).isFalse();
    robot.interact(() -> button("Start another class").fire());
    assertThat(button("Start the class").isVisible()).isTrue();
  }
}
