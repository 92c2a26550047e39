package walebook.desk.pieces;

import java.nio.file.Path;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import walebook.desk.DemoPlace;
import walebook.desk.WholeTable;
import walebook.quantity.Unit;

/** The list of pieces is no wider than a window of 1280 by 800, and nothing in it is cut. */
@ExtendWith(ApplicationExtension.class)
class PieceTableFitsTest {
  @TempDir Path folder;

  @SuppressWarnings("NullAway.Init")
  private DemoPlace<PiecesView> demo;

  @Start
  void start(Stage stage) {
    demo =
        new DemoPlace<>(
            stage,
            folder,
            (session, look) ->
                new PiecesView(session.words(), new PiecesViewModel(session, Unit.MM)));
  }

  @AfterEach
  void close() {
    demo.close();
  }

  @Test
  void theListStandsWholeWhateverItIsSortedBy(FxRobot robot) {
    WholeTable.is(robot, demo.view, DemoPlace.WIDE);
  }
}
