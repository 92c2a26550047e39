package walebook.desk.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TableColumnBase;
import javafx.scene.control.TableView;
import javafx.scene.control.ToggleButton;
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
import walebook.desk.RoomBook;
import walebook.desk.Sessions;
import walebook.desk.common.Notice;
import walebook.desk.common.PlaceFrame;
import walebook.desk.look.Look;
import walebook.desk.look.TextSize;
import walebook.desk.look.Theme;
import walebook.words.Words;

/** A part is built when it is first shown, and once: eight at a time would hold up a frame. */
@ExtendWith(ApplicationExtension.class)
class ClassroomViewTest {
  @SuppressWarnings("NullAway.Init")
  private Classroom room;

  @SuppressWarnings("NullAway.Init")
  private ClassroomView view;

  @Start
  void start(Stage stage) throws Exception {
    room = RoomBook.in(Files.createTempDirectory("parts").resolve("room.walebook"));
    Look look = new Look(Theme.LIGHT, TextSize.USUAL);
    view = new ClassroomView(Sessions.of(room), look);
    Scene scene = new Scene(view, 1090, 800);
    look.dress(scene);
    stage.setScene(scene);
    stage.show();
  }

  @AfterEach
  void close() {
    room.close();
  }

  private List<ToggleButton> parts() {
    return view.lookupAll(".segments .toggle-button").stream()
        .map(ToggleButton.class::cast)
        .toList();
  }

  @Test
  void aPartIsBuiltWhenItIsFirstShownAndStaysForTheNextTime(FxRobot robot) throws Exception {
    settle();
    assertThat(view.built()).isEqualTo(1);
    List<ToggleButton> parts = parts();
    assertThat(parts).hasSize(8);
    ToggleButton progress = parts.get(0);
    robot.interact(progress::fire);
    settle();
    assertThat(view.built()).isEqualTo(2);
    assertThat(view.lookupAll(".table-view"))
        .anyMatch(each -> !((TableView<?>) each).getItems().isEmpty());
    parts.forEach(each -> robot.interact(each::fire));
    assertThat(view.built()).isEqualTo(8);
    robot.interact(progress::fire);
    assertThat(view.built()).isEqualTo(8);
  }

  @Test
  void whatWasDoneInAPartIsNoNewsOfAnother(FxRobot robot) throws Exception {
    settle();
    PlaceFrame frame = (PlaceFrame) view.getCenter();
    robot.interact(() -> frame.notice().noticeProperty().set(new Notice("set aside", () -> {})));
    robot.interact(parts().get(0)::fire);
    assertThat(frame.notice().noticeProperty().get()).isEqualTo(Notice.NONE);
  }

  /** Cells are dear to make: a table made anew for each comparison took most of a frame's time. */
  @Test
  void oneTableShowsOneComparisonAfterTheOther(FxRobot robot) throws Exception {
    settle();
    robot.interact(parts().get(2)::fire);
    settle();
    ComboBox<Outcome> outcome = outcome();
    robot.interact(() -> outcome.setValue(Outcome.EDGE_CHANGE));
    settle();
    TableView<?> settings = settings();
    List<?> rows = List.copyOf(settings.getItems());
    assertThat(rows).isNotEmpty();
    assertThat(titles(settings)).contains(Words.english().say("desk.class.col.raw"));
    robot.interact(() -> outcome.setValue(Outcome.HELD));
    settle();
    assertThat(settings()).isSameAs(settings);
    assertThat(titles(settings)).contains(Words.english().say("desk.class.col.held-of"));
    assertThat(settings.getItems()).isNotEmpty().doesNotContainAnyElementsOf(cast(rows));
    robot.interact(() -> outcome.setValue(Outcome.EDGE_CHANGE));
    settle();
    assertThat(settings.getItems()).hasSameSizeAs(rows);
  }

  private void settle() throws Exception {
    WaitForAsyncUtils.waitForFxEvents();
    WaitForAsyncUtils.waitFor(5, TimeUnit.SECONDS, view::isAtRest);
    WaitForAsyncUtils.waitForFxEvents();
  }

  @SuppressWarnings("unchecked")
  private static <T> List<T> cast(List<?> rows) {
    return (List<T>) rows;
  }

  @SuppressWarnings("unchecked")
  private ComboBox<Outcome> outcome() {
    for (Node each : view.lookupAll(".combo-box")) {
      List<?> items = ((ComboBox<?>) each).getItems();
      if (!items.isEmpty() && items.get(0) instanceof Outcome) {
        return (ComboBox<Outcome>) each;
      }
    }
    throw new AssertionError("no choice of outcomes");
  }

  private TableView<?> settings() {
    String says = Words.english().say("desk.class.table.says");
    return view.lookupAll(".table-view").stream()
        .map(each -> (TableView<?>) each)
        .filter(each -> says.equals(each.getAccessibleText()))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> titles(TableView<?> table) {
    return table.getColumns().stream().map(TableColumnBase::getText).toList();
  }
}
