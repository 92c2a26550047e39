package walebook.desk.classroom;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import javafx.geometry.Bounds;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TableView;
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
import walebook.desk.common.InTurn;
import walebook.desk.common.PlaceFrame;
import walebook.desk.look.Look;
import walebook.desk.look.TextSize;
import walebook.desk.look.Theme;
import walebook.record.SeamEnd;
import walebook.words.Words;

/** An odd value is opened by a key, in a frame too low for its card. */
@ExtendWith(ApplicationExtension.class)
class OddViewTest {
  private static final Words WORDS = Words.english();

  /** What the places' list at the left leaves of 1280 px, at letters of twice the size. */
  private static final double BESIDE_LIST = 938;

  private final Look look = new Look(Theme.LIGHT, TextSize.USUAL);

  @SuppressWarnings("NullAway.Init")
  private Classroom room;

  @SuppressWarnings("NullAway.Init")
  private OddView view;

  @SuppressWarnings("NullAway.Init")
  private Stage stage;

  @Start
  void start(Stage shown) throws Exception {
    stage = shown;
    room = Classroom.in(Files.createTempDirectory("odd").resolve("room.walebook"));
    for (int end : new int[] {140, 142, 144, 141, 143, 145, 190}) {
      room.book.pieces().add(room.piece(SeamEnd.GAVE, end));
    }
    OddViewModel model = new OddViewModel(new FiltersViewModel(Sessions.of(room)));
    view = new OddView(model, new Around(told -> {}, new InTurn()));
    view.shown(true);
    Scene scene = new Scene(new PlaceFrame(WORDS, "Class").work(view), 1090, 500);
    look.dress(scene);
    stage.setScene(scene);
    stage.show();
  }

  @AfterEach
  void close() {
    room.close();
  }

  private void open(FxRobot robot) {
    robot.interact(
        () -> {
          TableView<?> table = (TableView<?>) view.lookup(".table-view");
          table.requestFocus();
          table.getSelectionModel().select(0);
        });
    robot.type(KeyCode.ENTER);
    WaitForAsyncUtils.waitForFxEvents();
  }

  private Node aside() {
    return view.lookupAll(".button").stream()
        .filter(each -> each instanceof Button)
        .filter(each -> ((Button) each).getText().equals(WORDS.say("desk.class.odd.set-aside")))
        .findFirst()
        .orElseThrow();
  }

  private static ScrollPane around(Node node) {
    return node instanceof ScrollPane found ? found : around(node.getParent());
  }

  @Test
  void theCardOfAnOpenedRowIsScrolledIntoView(FxRobot robot) {
    open(robot);
    ScrollPane scroll = around(view);
    Bounds seen = scroll.localToScene(scroll.getLayoutBounds());
    Bounds at = aside().localToScene(aside().getLayoutBounds());
    assertThat(at.getMaxY()).isLessThanOrEqualTo(seen.getMaxY());
    assertThat(at.getMinY()).isGreaterThanOrEqualTo(seen.getMinY());
  }

  @Test
  void atTwiceTheLettersTheCardIsNotCutAtTheRight(FxRobot robot) {
    robot.interact(
        () -> {
          look.textSizeProperty().set(new TextSize(200));
          Parent frame = requireNonNull(view.getScene()).getRoot();
          frame.getScene().setRoot(new Group());
          Scene scene = new Scene(frame, BESIDE_LIST, 500);
          look.dress(scene);
          stage.setScene(scene);
        });
    open(robot);
    ScrollPane scroll = around(view);
    assertThat(scroll.getWidth()).isEqualTo(BESIDE_LIST);
    Node card = view.lookup(".card");
    assertThat(card.localToScene(card.getLayoutBounds()).getMaxX())
        .isLessThanOrEqualTo(scroll.localToScene(scroll.getLayoutBounds()).getMaxX() - 32);
  }

  @Test
  void theReasonStandsOnceAndTheRuleInSmallPrint(FxRobot robot) {
    open(robot);
    assertThat(
            view.lookup(".card").lookupAll(".label").stream()
                .filter(each -> each instanceof Label)
                .map(each -> ((Label) each).getText())
                .filter(says -> says != null && says.contains("others like it")))
        .isEmpty();
    assertThat(view.lookupAll(".caption"))
        .anyMatch(each -> ((Label) each).getText().startsWith("By the rule: "));
  }
}
