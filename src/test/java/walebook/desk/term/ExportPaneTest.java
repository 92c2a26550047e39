package walebook.desk.term;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.function.Consumer;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import walebook.book.Classroom;
import walebook.desk.Sessions;
import walebook.desk.common.Background;
import walebook.desk.common.PickFile;
import walebook.desk.common.PlaceFrame;
import walebook.desk.common.Session;
import walebook.desk.common.Task;
import walebook.desk.common.Worker;
import walebook.desk.look.Look;
import walebook.desk.look.TextSize;
import walebook.desk.look.Theme;
import walebook.record.SeamEnd;

@ExtendWith(ApplicationExtension.class)
@SuppressWarnings("NullAway.Init")
class ExportPaneTest {
  @TempDir static Path folder;

  private final Held background = new Held();
  private Path own;
  private Classroom room;
  private PlaceFrame frame;

  @Start
  void start(Stage stage) throws IOException {
    own = Files.createTempDirectory(folder, "export");
    room = Classroom.in(own.resolve("a.walebook"));
    room.book.pieces().add(room.piece(SeamEnd.GAVE, 148));
    Session session = Sessions.bare(room.book, background, new Saved(own));
    session.schoolClassProperty().set(room.schoolClass);
    ExportPane pane = new ExportPane(session.words(), new ExportViewModel(session));
    frame = new PlaceFrame(session.words(), "Term record").work(pane);
    pane.foot(frame);
    Scene scene = new Scene(frame, 1090, 500);
    new Look(Theme.LIGHT, TextSize.USUAL).dress(scene);
    stage.setScene(scene);
    stage.show();
  }

  @AfterEach
  void close() {
    room.close();
  }

  @Test
  void howTheWritingGoesIsInSightAtTheEndOfThePage(FxRobot robot) {
    robot.interact(() -> ((ScrollPane) frame.lookup(".scroll-pane")).setVvalue(1));
    background.holds = true;
    robot.clickOn(button("Export the term"));
    assertThat(isInFoot(Objects.requireNonNull(frame.lookup(".progress-bar")))).isTrue();
    assertThat(isInFoot(label("Writing"))).isTrue();
    robot.clickOn(button("Stop"));
    assertThat(isInFoot(label("Stopped"))).isTrue();
    background.holds = false;
    robot.clickOn(button("Export the term"));
    assertThat(isInFoot(label("Written: "))).isTrue();
    robot.clickOn(button("Export the term"));
    assertThat(isInFoot(label("is there already"))).isTrue();
    robot.clickOn(button("Replace it"));
    assertThat(isInFoot(label("Written: "))).isTrue();
    assertThat(frame.lookup(".progress-bar").getParent().isVisible()).isFalse();
  }

  @Test
  void whatGoesOutStandsAboveTheListsToLeaveSomeOut() {
    assertThat(top(label("What goes out"))).isLessThan(top(label("Leave some out")));
    assertThat(label("Besides these").getText())
        .contains("Term, the summary", "Charts", "Columns, what each column means");
  }

  @Test
  void aListsTitleIsAsLargeAsTheText() {
    assertThat(frame.lookupAll(".titled-pane > .title > .text"))
        .hasSize(3)
        .allSatisfy(
            each -> assertThat(((Text) each).getFont().getSize()).isEqualTo(TextSize.BODY_PX));
  }

  private static double top(Node node) {
    return node.localToScene(0, 0).getY();
  }

  private Button button(String says) {
    return frame.lookupAll(".button").stream()
        .map(Button.class::cast)
        .filter(each -> says.equals(each.getText()) && isInFoot(each))
        .findFirst()
        .orElseThrow();
  }

  private Label label(String says) {
    return frame.lookupAll(".label").stream()
        .filter(each -> each instanceof Label label && label.getText().contains(says))
        .map(Label.class::cast)
        .filter(Node::isVisible)
        .findFirst()
        .orElseThrow();
  }

  private boolean isInFoot(Node node) {
    Bounds at = node.localToScene(node.getLayoutBounds());
    return frame.lookup(".place-foot").lookupAll("*").contains(node)
        && at.getHeight() > 0
        && at.getMaxY() <= frame.getHeight();
  }

  private record Saved(Path own) implements PickFile {
    @Override
    public @Nullable Path open(Kind kind) {
      return null;
    }

    @Override
    public Path save(Kind kind, String name) {
      return own.resolve(name);
    }
  }

  /** Does everything at once, or leaves it under way. */
  private static final class Held implements Background {
    private final Background atOnce = Worker.sameThread();
    private boolean holds;

    @Override
    public <T> Task run(Work<T> work, Consumer<T> done, Consumer<Throwable> failed) {
      return holds ? new Task() : atOnce.run(work, done, failed);
    }
  }
}
