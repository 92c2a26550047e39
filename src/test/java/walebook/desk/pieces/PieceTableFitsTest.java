package walebook.desk.pieces;

import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.Scene;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import walebook.act.book.DemoBook;
import walebook.book.Book;
import walebook.desk.Sessions;
import walebook.desk.WholeTable;
import walebook.desk.common.Session;
import walebook.desk.look.Look;
import walebook.desk.look.TextSize;
import walebook.desk.look.Theme;
import walebook.quantity.Unit;

/** The list of pieces is no wider than a window of 1280 by 800, and nothing in it is cut. */
@ExtendWith(ApplicationExtension.class)
class PieceTableFitsTest {
  /** What the places' names at the left leave of 1280. */
  private static final int WIDE = 1090;

  @SuppressWarnings("NullAway.Init")
  private Book demo;

  @SuppressWarnings("NullAway.Init")
  private Session session;

  @SuppressWarnings("NullAway.Init")
  private PiecesView view;

  @Start
  void start(Stage stage) throws Exception {
    Path folder = Files.createTempDirectory("pieces");
    demo = DemoBook.open(folder.resolve("demo.walebook"));
    session = Sessions.of(demo, demo.classes().all().get(0), null);
    view = new PiecesView(session.words(), new PiecesViewModel(session, Unit.MM));
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
  void theListStandsWholeWhateverItIsSortedBy(FxRobot robot) {
    WholeTable.is(robot, view, WIDE);
  }
}
