package walebook.desk.cloths;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import walebook.act.book.MakeDemoBook;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.book.open.SqliteFiles;
import walebook.desk.Sessions;
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
    demo =
        new MakeDemoBook(new SqliteFiles(), Classroom.CLOCK)
            .make(folder.resolve("demo.walebook"), MakeDemoBook.SEED)
            .value();
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
    whole(robot);
    robot.interact(
        () ->
            session.wish(
                new Wish(
                    "cloths",
                    Wish.What.OPEN,
                    Objects.requireNonNull(demo.cloths().all().get(0)).id())));
    WaitForAsyncUtils.waitForFxEvents();
    whole(robot);
  }

  private void whole(FxRobot robot) {
    TableView<?> table = (TableView<?>) view.lookup(".table-view");
    double columns = table.getColumns().stream().mapToDouble(TableColumn::getWidth).sum();
    assertThat(columns).isLessThanOrEqualTo(table.getWidth());
    assertThat(table.getWidth()).isLessThanOrEqualTo(WIDE);
    for (int i = 0; i < table.getColumns().size(); i++) {
      sort(robot, table, i);
      nothingCut(table, ".column-header > .label");
      nothingCut(table, ".table-cell");
    }
  }

  private static <T> void sort(FxRobot robot, TableView<T> table, int column) {
    robot.interact(() -> table.getSortOrder().setAll(List.of(table.getColumns().get(column))));
    WaitForAsyncUtils.waitForFxEvents();
  }

  /** What is cut short ends in dots on the screen, while its own text is whole. */
  private static void nothingCut(TableView<?> table, String kind) {
    for (Node node : table.lookupAll(kind)) {
      // Rows that are put by for later are neither seen nor laid out.
      if (node.getParent().isVisible()
          && node instanceof Labeled cell
          && cell.lookup(".text") instanceof Text seen) {
        String whole = cell.getText() == null ? "" : cell.getText();
        if (!whole.isEmpty()) {
          assertThat(seen.getText()).isEqualTo(whole);
        }
      }
    }
  }
}
