package walebook.desk.cloths;

import java.nio.file.Path;
import java.util.Objects;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import walebook.desk.DemoPlace;
import walebook.desk.WholeTable;
import walebook.desk.common.Wish;

/** No table of cloths is wider than a window of 1280 by 800, and none of its titles is cut. */
@ExtendWith(ApplicationExtension.class)
class ClothTablesFitTest {
  @TempDir Path folder;

  @SuppressWarnings("NullAway.Init")
  private DemoPlace<ClothsView> demo;

  @Start
  void start(Stage stage) {
    demo = new DemoPlace<>(stage, folder, (session, look) -> new ClothsView(session));
  }

  @AfterEach
  void close() {
    demo.close();
  }

  @Test
  void theListAndTheReadingsStandWholeWhateverTheyAreSortedBy(FxRobot robot) {
    WholeTable.is(robot, demo.view, DemoPlace.WIDE);
    robot.interact(
        () ->
            demo.session.wish(
                new Wish(
                    "cloths",
                    Wish.What.OPEN,
                    Objects.requireNonNull(demo.book.cloths().all().get(0)).id())));
    WaitForAsyncUtils.waitForFxEvents();
    WholeTable.is(robot, demo.view, DemoPlace.WIDE);
  }
}
