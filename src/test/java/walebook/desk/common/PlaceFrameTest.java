package walebook.desk.common;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollBar;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import walebook.desk.look.Look;
import walebook.desk.look.TextSize;
import walebook.desk.look.Theme;
import walebook.words.Words;

@ExtendWith(ApplicationExtension.class)
class PlaceFrameTest {
  private final Look look = new Look(Theme.LIGHT, TextSize.USUAL);

  // Made with the stage: controls need the toolkit, which may not run before.
  @SuppressWarnings("NullAway.Init")
  private Label work;

  @SuppressWarnings("NullAway.Init")
  private Label meaning;

  @SuppressWarnings("NullAway.Init")
  private PlaceFrame frame;

  @Start
  void start(Stage stage) {
    work = new Label("work");
    meaning = new Label("meaning");
    frame =
        new PlaceFrame(Words.english(), "Cloths")
            .work(work)
            .means(meaning)
            .primary(new Button("Save"));
    Scene scene = new Scene(frame, 1100, 700);
    look.dress(scene);
    stage.setScene(scene);
    stage.show();
  }

  @Test
  void whatItMeansStandsAtTheRightAndBelowWhenLettersAreLarge(FxRobot robot) {
    assertThat(left(meaning)).isGreaterThan(left(work) + 500);
    robot.interact(() -> look.textSizeProperty().set(new TextSize(200)));
    assertThat(top(meaning)).isGreaterThan(top(work));
    assertThat(left(meaning)).isLessThan(left(work) + 100);
    robot.interact(() -> look.textSizeProperty().set(TextSize.USUAL));
    assertThat(left(meaning)).isGreaterThan(left(work) + 500);
  }

  /** Somebody at the end of a long list goes on to another part without scrolling back. */
  @Test
  void thePartsStayAboveTheWorkWhileItIsScrolled(FxRobot robot) {
    Label parts = new Label("Students · Export");
    Region tall = new Region();
    tall.setMinHeight(3000);
    robot.interact(() -> frame.parts(parts).work(tall, work));
    robot.interact(() -> IntoView.show(work));
    robot.interact(() -> {});
    assertThat(top(work)).as("scrolled to").isBetween(0.0, frame.getHeight());
    assertThat(top(parts)).isBetween(0.0, 150.0);
    robot.interact(() -> look.textSizeProperty().set(new TextSize(200)));
    robot.interact(() -> {});
    assertThat(top(parts)).as("with the work, where there is little room").isLessThan(top(tall));
    assertThat(parts.getParent()).isEqualTo(tall.getParent());
    robot.interact(() -> look.textSizeProperty().set(TextSize.USUAL));
    robot.interact(() -> {});
    assertThat(parts.getParent()).isNotEqualTo(tall.getParent());
  }

  @Test
  void noViewIsKeptAsOneImageThatEachSmallChangeWouldDrawAnew() {
    assertThat(frame.lookupAll(".viewport")).hasSize(2).noneMatch(Node::isCache);
  }

  @Test
  void whoIsThereAndTheButtonBesideAreReadWholeInLargeLetters(FxRobot robot) {
    Label who = new Label("Esi Lightwater-Harbourmaster of the Long Eastern Quay and its Sheds");
    Label of = new Label("Stretch sewing, Monday evening");
    Button other = new Button("that is not me");
    robot.interact(
        () -> {
          look.textSizeProperty().set(new TextSize(200));
          frame.context(who, of, other);
        });
    robot.interact(() -> {});
    for (Labeled each : List.of(who, of, other)) {
      Text seen = (Text) each.lookup(".text");
      assertThat(seen.getText().replace("\n", " ")).isEqualTo(each.getText());
      assertThat(left(each) + each.getWidth()).isLessThanOrEqualTo(frame.getWidth());
      assertThat(seen.getLayoutBounds().getHeight()).isLessThanOrEqualTo(each.getHeight());
    }
    robot.interact(() -> look.textSizeProperty().set(TextSize.USUAL));
    robot.interact(() -> {});
    assertThat(top(other)).isLessThan(top(work) - 20);
    assertThat(who.getHeight()).isLessThan(2 * TextSize.BODY_PX);
  }

  /** Given more than there is, the foot and its primary action would lie beyond the window. */
  @Test
  void aLongClassNameInLargeLettersLeavesThePlaceInTheWindow(FxRobot robot) {
    robot.interact(
        () -> {
          look.textSizeProperty().set(new TextSize(200));
          Scene scene = frame.getScene();
          frame =
              new PlaceFrame(Words.english(), "Term record")
                  .context(
                      Texts.text(
                          "Stretch sewing, Monday evening, upper room, with the long tables", ""))
                  .work(work)
                  .primary(new Button("Export the term"));
          Region places = new Region();
          places.setPrefWidth(300);
          scene.setRoot(new BorderPane(new BorderPane(frame), null, null, null, places));
          look.dress(scene);
        });
    robot.interact(() -> {});
    assertThat(frame.getWidth()).isPositive();
    assertThat(left(frame) + frame.getWidth()).isLessThanOrEqualTo(frame.getScene().getWidth());
    assertThat(top(frame) + frame.getHeight()).isLessThanOrEqualTo(frame.getScene().getHeight());
  }

  /**
   * Sixty cards side by side would fit; wrapped they don't, and the wheel must not be the only way.
   */
  @Test
  void cardsThatWrapBelowTheFootHaveABarBesideThem(FxRobot robot) {
    robot.interact(
        () -> {
          FlowPane cards = new FlowPane();
          cards.setPrefWrapLength(60 * 200);
          cards.setMinHeight(Region.USE_PREF_SIZE);
          for (int i = 0; i < 60; i++) {
            cards.getChildren().add(new Rectangle(200, 80));
          }
          frame.work(cards);
        });
    robot.interact(() -> {});
    assertThat(bars()).isEqualTo(1);
    robot.interact(() -> frame.work(work));
    robot.interact(() -> {});
    assertThat(bars()).isZero();
  }

  private long bars() {
    return frame.lookupAll(".scroll-bar").stream()
        .filter(
            each ->
                each instanceof ScrollBar bar
                    && bar.getOrientation() == Orientation.VERTICAL
                    && bar.isVisible())
        .count();
  }

  @Test
  void foldsAwayAndComesBack(FxRobot robot) {
    robot.clickOn(".fold-button");
    assertThat(meaning.getScene()).isNull();
    robot.clickOn(".fold-button");
    assertThat(meaning.getScene()).isNotNull();
    assertThat(frame.sideOpenProperty().get()).isTrue();
  }

  @Test
  void theNoticeOffersUndoOnlyWhenThereIsOne(FxRobot robot) {
    int[] undone = {0};
    robot.interact(
        () -> frame.notice().noticeProperty().set(new Notice("saved", () -> undone[0]++)));
    robot.clickOn("undo");
    assertThat(undone[0]).isEqualTo(1);
    robot.interact(() -> frame.notice().noticeProperty().set(new Notice("gone", null)));
    assertThat(robot.lookup("undo").query().isVisible()).isFalse();
  }

  private static double left(Node node) {
    return node.localToScene(0, 0).getX();
  }

  private static double top(Node node) {
    return node.localToScene(0, 0).getY();
  }

  @Test
  void theTabKeyGoesInTheOrderOfReading(FxRobot robot) {
    robot.interact(
        () -> {
          frame.context(new Button("Back")).work(new Button("Work"));
          robot.lookup("Back").query().requestFocus();
        });
    List<String> order = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      order.add(((Labeled) frame.getScene().getFocusOwner()).getText());
      robot.type(KeyCode.TAB);
      robot.interact(() -> {});
    }
    assertThat(order).containsExactly("Back", "Work", "Save");
  }
}
