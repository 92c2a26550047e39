package walebook.desk.pieces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCombination;
import javafx.stage.Stage;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import walebook.act.piece.PieceField;
import walebook.book.PieceFilter;
import walebook.desk.PlannedClass;
import walebook.desk.common.Session;
import walebook.desk.common.Wish;
import walebook.desk.common.Worker;
import walebook.desk.look.Look;
import walebook.desk.look.TextSize;
import walebook.desk.look.Theme;
import walebook.desk.shell.PlaceEntry;
import walebook.desk.shell.Shell;
import walebook.quantity.Unit;
import walebook.record.SeamEnd;
import walebook.record.TestPiece;

/** The place of test pieces under hands: keys, scrolling, and pictures that stay where they are. */
@ExtendWith(ApplicationExtension.class)
@SuppressWarnings("NullAway.Init")
class PiecesViewTest {
  @TempDir static Path folder;

  private PlannedClass made;
  private Session session;
  private PiecesViewModel model;
  private PiecesView view;
  private Scene scene;

  @Start
  void start(Stage stage) {
    made = PlannedClass.in(folder.resolve(System.nanoTime() + ".walebook"), 1);
    session = made.sitting(Worker.sameThread(), PlannedClass.OneFile.NONE);
    model = new PiecesViewModel(session, Unit.MM);
    view = new PiecesView(session.words(), model);
    Look look = new Look(Theme.LIGHT, TextSize.USUAL);
    Shell shell =
        new Shell(
            session.words(),
            look,
            List.of(
                new PlaceEntry(
                    "pieces", "Test pieces", KeyCombination.keyCombination("Ctrl+1"), () -> view),
                new PlaceEntry(
                    "other", "Other", KeyCombination.keyCombination("Ctrl+2"), Label::new)));
    scene = new Scene(shell, 1280, 800);
    look.dress(scene);
    stage.setScene(scene);
    stage.show();
  }

  @AfterEach
  void close() {
    made.close();
  }

  private void form(FxRobot robot) {
    robot.interact(() -> session.wish(new Wish("pieces", Wish.What.LOG_PLANNED, made.planned(0))));
    robot.interact(() -> {});
  }

  private String text(PieceField field) {
    return model.form().field(field).textProperty().get();
  }

  private @Nullable String focused() {
    for (Node at = scene.getFocusOwner(); at != null; at = at.getParent()) {
      if (at.getId() != null && !(at instanceof TextField)) {
        return at.getId();
      }
    }
    return null;
  }

  private ScrollPane scroll() {
    return view.lookupAll(".scroll-pane").stream()
        .map(ScrollPane.class::cast)
        .filter(each -> each.getContent().getStyleClass().contains("place-work"))
        .findFirst()
        .orElseThrow();
  }

  private void focus(FxRobot robot, String of) {
    robot.interact(() -> Objects.requireNonNull(view.lookup(of)).requestFocus());
  }

  @Test
  void enterGoesOnWithoutAChoiceAndAFirstLetterChooses(FxRobot robot) {
    form(robot);
    assertThat(scroll().getVvalue()).isZero();
    focus(robot, "#end .toggle-button");
    robot.type(KeyCode.ENTER);
    assertThat(text(PieceField.END)).isEmpty();
    assertThat(focused()).isEqualTo("end-length");
    focus(robot, "#end .toggle-button");
    robot.write("h");
    assertThat(text(PieceField.END)).isEqualTo("held");
    assertThat(focused()).isEqualTo("end-length");
    focus(robot, "#end .toggle-button");
    robot.write("g");
    assertThat(text(PieceField.END)).isEqualTo("gave");
    focus(robot, "#grade .toggle-button");
    robot.write("4");
    assertThat(text(PieceField.GRADE)).isEqualTo("4");
  }

  @Test
  void anotherPieceOrFormBeginsAtTheTop(FxRobot robot) {
    TestPiece first = made.room.piece(SeamEnd.GAVE, 140);
    TestPiece second = made.room.piece(SeamEnd.HELD, 150);
    made.room.book.pieces().add(first);
    made.room.book.pieces().add(second);
    robot.interact(() -> model.open(first.id()));
    robot.interact(() -> scroll().setVvalue(1));
    robot.interact(session::changed);
    assertThat(scroll().getVvalue()).isEqualTo(1);
    robot.interact(() -> model.open(second.id()));
    robot.interact(() -> {});
    assertThat(scroll().getVvalue()).isZero();
    form(robot);
    robot.interact(() -> scroll().setVvalue(1));
    robot.interact(model::toList);
    form(robot);
    assertThat(scroll().getVvalue()).isZero();
  }

  @Test
  void theFirstFaultChosenLeavesThePicturesWhereTheyAreAndNoBoxBehind(FxRobot robot) {
    form(robot);
    robot.interact(
        () -> {
          view.lookupAll("#choose-fault .fold-button").forEach(each -> ((Button) each).fire());
          scroll().setVvalue(0.6);
        });
    robot.interact(() -> {});
    ToggleButton tile = (ToggleButton) Objects.requireNonNull(view.lookup(".fault-tile"));
    double before = tile.localToScene(0, 0).getY();
    robot.interact(tile::fire);
    robot.interact(() -> {});
    assertThat(tile.localToScene(0, 0).getY()).isCloseTo(before, within(2.0));
    Node inHand = Objects.requireNonNull(view.lookup(".fault-in-hand"));
    assertThat(inHand.isVisible()).isTrue();
    robot.interact(model::discard);
    form(robot);
    assertThat(inHand.isVisible()).isFalse();
  }

  @Test
  void theKeySavesTheFormThatIsSeenWhereverTheFocusIs(FxRobot robot) {
    form(robot);
    focus(robot, "#end .toggle-button");
    robot.write("g140");
    robot.press(KeyCode.CONTROL).type(KeyCode.DIGIT2).release(KeyCode.CONTROL);
    robot.interact(() -> {});
    robot.press(KeyCode.CONTROL).type(KeyCode.S).release(KeyCode.CONTROL);
    // Not seen, not saved.
    assertThat(made.room.book.pieces().count(PieceFilter.ALL)).isZero();
    robot.press(KeyCode.CONTROL).type(KeyCode.DIGIT1).release(KeyCode.CONTROL);
    robot.interact(
        () -> Objects.requireNonNull(scene.getRoot().lookup(".place-button")).requestFocus());
    robot.press(KeyCode.CONTROL).type(KeyCode.S).release(KeyCode.CONTROL);
    robot.interact(() -> {});
    assertThat(made.room.book.pieces().count(PieceFilter.ALL)).isEqualTo(1);
  }
}
