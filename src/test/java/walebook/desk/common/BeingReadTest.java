package walebook.desk.common;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Objects;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Function;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import walebook.book.Classroom;
import walebook.desk.PlannedClass;
import walebook.desk.cloths.ClothsView;
import walebook.desk.decide.DecideView;
import walebook.desk.lessons.LessonsView;
import walebook.desk.look.Look;
import walebook.desk.look.TextSize;
import walebook.desk.look.Theme;
import walebook.desk.today.TodayView;
import walebook.desk.today.TodayViewModel;
import walebook.quantity.Unit;
import walebook.tables.SharedTables;
import walebook.words.Words;

@ExtendWith(ApplicationExtension.class)
class BeingReadTest {
  @TempDir Path folder;

  private final Look look = new Look(Theme.LIGHT, TextSize.USUAL);
  private final Deque<Runnable> waiting = new ArrayDeque<>();

  // Made with the stage: controls need the toolkit, which may not run before.
  @SuppressWarnings("NullAway.Init")
  private Stage stage;

  @Start
  void start(Stage given) {
    stage = given;
    stage.setScene(new Scene(new javafx.scene.layout.StackPane(), 900, 600));
    stage.show();
  }

  @Test
  void aPlaceSaysThatTheBookIsReadUntilItsRowsCome(FxRobot robot) throws Exception {
    stands(robot, "cloths", ClothsView::new);
    stands(robot, "lessons", session -> new LessonsView(session, look));
    stands(robot, "decide", session -> new DecideView(session, look, Unit.MM));
    stands(robot, "today", session -> new TodayView(Words.english(), new TodayViewModel(session)));
  }

  /** A book whose reading takes as long as the test wants. */
  private void stands(FxRobot robot, String name, Function<Session, Parent> place)
      throws Exception {
    try (Classroom room = Classroom.in(folder.resolve(name + ".walebook"))) {
      Session session = slow(room);
      AtomicBoolean flash = new AtomicBoolean(true);
      robot.interact(
          () -> {
            stage.getScene().setRoot(place.apply(session));
            stage.getScene().getRoot().applyCss();
            flash.set(line().isVisible());
          });
      assertThat(flash).as("no flash in %s", name).isFalse();
      WaitForAsyncUtils.waitFor(10, TimeUnit.SECONDS, () -> line().isVisible());
      while (!waiting.isEmpty()) {
        robot.interact(() -> waiting.remove().run());
      }
      assertThat((Object) stage.getScene().getRoot().lookup(".being-read")).as(name).isNull();
    }
  }

  private Node line() {
    return Objects.requireNonNull(stage.getScene().getRoot().lookup(".being-read"));
  }

  private Session slow(Classroom room) {
    waiting.clear();
    Session session =
        new Session(
            room.book,
            SharedTables.read(),
            Words.english(),
            Classroom.CLOCK,
            new Random(5),
            new Worker(waiting::add, Runnable::run),
            PlannedClass.OneFile.NONE,
            fault -> {
              throw new IllegalStateException(fault);
            });
    session.schoolClassProperty().set(room.schoolClass);
    return session;
  }
}
