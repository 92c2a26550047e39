package walebook.desk.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.util.Collections;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.image.WritableImage;
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
import walebook.compare.Outcome;
import walebook.desk.Sessions;
import walebook.desk.look.Look;
import walebook.desk.look.TextSize;
import walebook.desk.look.Theme;
import walebook.drawing.DotPlot;
import walebook.drawing.DotRow;
import walebook.record.PullReading;
import walebook.record.SeamEnd;
import walebook.words.Words;

/** A comparison of many settings, far higher than the screen as it would be drawn elsewhere. */
@ExtendWith(ApplicationExtension.class)
class ClassBoardTest {
  private static final Words WORDS = Words.english();
  private static final int SETTINGS = 24;

  private final Look look = new Look(Theme.LIGHT, TextSize.USUAL);

  @SuppressWarnings("NullAway.Init")
  private Classroom room;

  @SuppressWarnings("NullAway.Init")
  private Stage board;

  @Start
  void start(Stage stage) throws Exception {
    room = Classroom.in(Files.createTempDirectory("fair").resolve("room.walebook"));
    for (int i = 0; i < 8; i++) {
      room.book
          .pieces()
          .add(
              room.piece(
                  i % 2 == 0 ? room.first.id() : room.second.id(),
                  i < 4 ? 1.5 : 2.5,
                  List.of(new PullReading(1, SeamEnd.GAVE, 130 + i % 4)),
                  List.of(),
                  null));
    }
    FiltersViewModel filters = new FiltersViewModel(Sessions.of(room));
    filters.outcomeProperty().set(Outcome.SEAM_STRETCH);
    FairViewModel model = new FairViewModel(filters);
    model.asking().shown(true);
    FairFound found = model.foundProperty().get();
    assertThat(found).isNotNull();
    List<DotRow> rows =
        Collections.nCopies(
            SETTINGS,
            new DotRow("setting", List.of(new DotRow.Dot(30, false)), 30.0, 25.0, 35.0, 0));
    List<Finding.Photo> photos =
        Collections.nCopies(3, new Finding.Photo("EPG-K7G", new WritableImage(700, 525)));
    ClassBoard.Shown shown =
        new ClassBoard.Shown(
            "all lessons · names hidden",
            List.of(
                new Finding(
                    List.of("first", "second", "third"), new DotPlot("stretch", rows, null), ""),
                new Finding(List.of("best"), null, "", photos)),
            FairViewModel.foot(WORDS, found));
    Scene scene = new Scene(new ClassBoard(WORDS, shown, 100), 1280, 800);
    look.dress(scene);
    stage.setScene(scene);
    stage.show();
    scene.getRoot().requestFocus();
    board = stage;
  }

  @AfterEach
  void close() {
    room.close();
  }

  private List<String> said() {
    WaitForAsyncUtils.waitForFxEvents();
    return board.getScene().getRoot().lookupAll(".label").stream()
        .map(each -> ((Label) each).getText())
        .toList();
  }

  @Test
  void theFirstScreenSaysOfWhatItIsOnHowMuchItRestsAndWhichKeysLead() {
    assertThat(said())
        .contains(
            "all lessons · names hidden",
            "first",
            "Pieces: 8 · set aside: 0 · pairs that can’t be told apart yet: 1 of 1",
            "1 of 5   ·   more: Space or →   ·   back: ←   ·   Esc closes")
        .doesNotContain("second");
  }

  @Test
  void thePlotIsWholeOnTheScreen() {
    said();
    Node picture = board.getScene().getRoot().lookup(".picture-pane");
    Bounds at = picture.localToScene(picture.getLayoutBounds());
    assertThat(at.getHeight()).isGreaterThan(200);
    assertThat(at.getMaxY()).isLessThan(board.getScene().getHeight());
    assertThat(at.getMaxX()).isLessThanOrEqualTo(board.getScene().getWidth());
  }

  /** Sentences, title and foot leave it no room beside them: it stands below, by the same key. */
  @Test
  void withTheLargestLettersThePlotHasAScreenOfItsOwnBelowTheSentence(FxRobot robot) {
    said();
    robot.interact(() -> look.textSizeProperty().set(new TextSize(200)));
    said();
    robot.interact(() -> first().setText("a sentence of some length, ".repeat(4)));
    said();
    robot.type(KeyCode.SPACE);
    assertThat(said()).doesNotContain("second");
    Node picture = board.getScene().getRoot().lookup(".picture-pane");
    Bounds at = picture.localToScene(picture.getLayoutBounds());
    assertThat(at.getHeight()).isGreaterThan(200);
    assertThat(at.getMinY()).isGreaterThanOrEqualTo(0);
    assertThat(at.getMaxY()).isLessThan(board.getScene().getHeight());
  }

  @Test
  void photosStandWholeBesideEachOther(FxRobot robot) {
    for (int i = 0; i < 4; i++) {
      robot.type(KeyCode.SPACE);
    }
    assertThat(said()).contains("best", "EPG-K7G");
    double end = 0;
    for (Node each : board.getScene().getRoot().lookupAll(".image-view")) {
      Bounds at = each.localToScene(each.getLayoutBounds());
      assertThat(at.getWidth()).isGreaterThan(300);
      assertThat(at.getMinX()).isGreaterThan(end);
      end = at.getMaxX();
    }
    assertThat(end).isBetween(1000.0, 1280.0);
  }

  private Label first() {
    return (Label) board.getScene().getRoot().lookup(".class-board-page > .label");
  }

  @Test
  void theKeysTurnToTheOtherSentencesAndClose(FxRobot robot) {
    robot.type(KeyCode.SPACE);
    assertThat(said()).contains("second", "third").doesNotContain("first");
    robot.type(KeyCode.LEFT);
    assertThat(said()).contains("first");
    robot.type(KeyCode.ESCAPE);
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(board.isShowing()).isFalse();
  }
}
