package walebook.desk.cloths;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import javafx.scene.Scene;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import walebook.act.book.DemoBook;
import walebook.book.Book;
import walebook.desk.Sessions;
import walebook.desk.WholeTable;
import walebook.desk.common.Session;
import walebook.desk.common.Wish;
import walebook.desk.look.Look;
import walebook.desk.look.TextSize;
import walebook.desk.look.Theme;

/** No table of cloths is wider than a window of 1280 by 800, and none of its titles is cut. */
@ExtendWith(ApplicationExtension.class)
class ClothTablesFitTest {
  /** What the places' names at the left leave of 1280. */
  private static final int WIDE = 1090;

  @SuppressWarnings("NullAway.Init")
  private Book demo;

  @SuppressWarnings("NullAway.Init")
  private Session session;

  @SuppressWarnings("NullAway.Init")
  private ClothsView view;

  @Start
  void start(Stage stage) throws Exception {
    Path folder = Files.createTempDirectory("cloths");
    demo = DemoBook.open(folder.resolve("demo.walebook"));
    session = Sessions.of(demo, demo.classes().all().get(0), null);
    view = new ClothsView(session);
    Scene scene = new Scene(view, WIDE, 800);
    new Look(Theme.LIGHT, TextSize.USUAL).dress(scene);
    stage.setScene(scene);
    stage.show();
  }

  @AfterEach
  void close() {
    demo.close();
  }

  @Test
  void theListAndTheReadingsStandWholeWhateverTheyAreSortedBy(FxRobot robot) {
    WholeTable.is(robot, view, WIDE);
    robot.interact(
        () ->
            session.wish(
                new Wish(
                    "cloths",
                    Wish.What.OPEN,
                    Objects.requireNonNull(demo.cloths().all().get(0)).id())));
    WaitForAsyncUtils.waitForFxEvents();
    WholeTable.is(robot, view, WIDE);
  }
}
