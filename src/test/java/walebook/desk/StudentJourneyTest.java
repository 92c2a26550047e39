package walebook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCombination;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import walebook.book.PieceFilter;
import walebook.desk.common.Session;
import walebook.desk.common.Worker;
import walebook.desk.look.Look;
import walebook.desk.look.TextSize;
import walebook.desk.look.Theme;
import walebook.desk.pieces.PiecesView;
import walebook.desk.pieces.PiecesViewModel;
import walebook.desk.shell.PlaceEntry;
import walebook.desk.shell.Shell;
import walebook.desk.today.TodayView;
import walebook.desk.today.TodayViewModel;
import walebook.quantity.Unit;
import walebook.record.SeamEnd;
import walebook.record.TestPiece;
import walebook.words.Words;

/** A student's evening: say who I am, log three pieces of my plan, sew one again. */
@ExtendWith(ApplicationExtension.class)
@SuppressWarnings("NullAway.Init")
class StudentJourneyTest {
  @TempDir static Path folder;

  private PlannedClass made;
  private PiecesViewModel pieces;

  @Start
  void start(Stage stage) {
    made = PlannedClass.in(folder.resolve("class.walebook"), 1);
    Session session = made.session(Worker.sameThread(), PlannedClass.OneFile.NONE);
    Words words = Words.english();
    Look look = new Look(Theme.LIGHT, TextSize.USUAL);
    TodayViewModel today = new TodayViewModel(session);
    pieces = new PiecesViewModel(session, Unit.MM);
    Shell shell =
        new Shell(
            words,
            look,
            List.of(
                entry("today", "Today", 1, () -> new TodayView(words, today)),
                entry("pieces", "Test pieces", 2, () -> new PiecesView(words, pieces))));
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
    WaitForAsyncUtils.waitForAsyncFx(5000, pieces::rest);
    made.close();
  }

  private static PlaceEntry entry(
      String key, String title, int digit, java.util.function.Supplier<Node> view) {
    return new PlaceEntry(key, title, KeyCombination.keyCombination("Ctrl+" + digit), view);
  }

  @Test
  void logsThreePlannedPiecesAndSewsOneAgain(FxRobot robot) {
    robot.write("ada").type(KeyCode.ENTER);
    robot.clickOn("Log this piece");
    log(robot, 1, "160");
    save(robot);
    robot.clickOn("Next piece");
    log(robot, 0, "1x40");
    save(robot);
    assertThat(found()).hasSize(1);
    assertThat(robot.lookup("#end-length .field-problem").queryLabeled().getText()).isNotEmpty();
    fill(robot, "#end-length", "140");
    save(robot);
    assertThat(found()).hasSize(2);
    robot.clickOn("Next piece");
    log(robot, 0, "145,5");
    save(robot);
    robot.clickOn("Sew again with one change");
    fill(robot, "#dial-width", "4.5");
    log(robot, 1, "158");
    save(robot);

    List<TestPiece> all = found();
    assertThat(all).hasSize(4);
    assertThat(all.get(3).measure().pulls().get(0).end()).isEqualTo(SeamEnd.HELD);
    assertThat(all.get(2).measure().pulls().get(0).endMm()).isEqualTo(140);
    assertThat(all.get(1).measure().pulls().get(0).endMm()).isEqualTo(145.5);
    assertThat(Objects.requireNonNull(all.get(0).parent()).changed()).isEqualTo("dial-width");
    assertThat(Objects.requireNonNull(all.get(0).parent()).pieceId()).isEqualTo(all.get(1).id());
    assertThat(robot.lookup(".attempt").queryAll()).hasSize(2);
  }

  private List<TestPiece> found() {
    return made.room.book.pieces().list(PieceFilter.ALL);
  }

  private void log(FxRobot robot, int end, String length) {
    List<Node> buttons =
        robot.lookup("#end .toggle-button").queryAll().stream().map(Node.class::cast).toList();
    robot.interact(() -> ((ToggleButton) buttons.get(end)).fire());
    fill(robot, "#end-length", length);
  }

  private void fill(FxRobot robot, String field, String text) {
    TextField control = robot.lookup(field + " .text-field").queryAs(TextField.class);
    robot.interact(
        () -> {
          control.requestFocus();
          control.selectAll();
        });
    robot.write(text).type(KeyCode.ENTER);
  }

  private void save(FxRobot robot) {
    robot.press(KeyCode.CONTROL).type(KeyCode.S).release(KeyCode.CONTROL);
    WaitForAsyncUtils.waitForFxEvents();
  }
}
