package walebook.desk.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.TableView;
import javafx.scene.control.ToggleButton;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import walebook.act.book.DemoBook;
import walebook.book.Book;
import walebook.desk.Sessions;
import walebook.desk.look.TextSize;

/**
 * With the largest letters every place, and every part of it, lies wholly right of the list of
 * places and ends with the window, in the demo class's window of 1280 by 800.
 */
@ExtendWith(ApplicationExtension.class)
@SuppressWarnings("NullAway.Init")
class LargeLettersTest {
  /** Bounds are snapped to whole pixels. */
  private static final double SNAP = 1;

  @TempDir static Path folder;

  private Book demo;
  private OpenedWindow window;

  @Start
  void start(Stage stage) {
    demo = DemoBook.open(folder.resolve("demo.walebook"));
    window =
        new OpenedWindow(
            stage, Sessions.of(demo, demo.classes().all().get(0), null), new TextSize(200));
  }

  @AfterEach
  void close() {
    window.close();
    demo.close();
  }

  @Test
  void everyPartOfEveryPlaceStandsBesideTheListAndEndsWithTheWindow(FxRobot robot) {
    List<String> wrong = new ArrayList<>();
    int parts = 0;
    for (Node place : List.copyOf(window.shell.lookupAll(".place-button"))) {
      robot.interact(((ToggleButton) place)::fire);
      String name = ((ToggleButton) place).getText();
      parts++;
      look(robot, name, wrong);
      Node row = center().lookup(".segments");
      int many = row == null ? 0 : buttons(row).size();
      for (int i = 0; i < many; i++) {
        Node now = center().lookup(".segments");
        if (now == null || buttons(now).size() != many) {
          break;
        }
        ToggleButton part = buttons(now).get(i);
        robot.interact(part::fire);
        parts++;
        look(robot, name + ", " + part.getText(), wrong);
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(parts).isGreaterThan(20);
  }

  private void look(FxRobot robot, String where, List<String> wrong) {
    // Wrapped text settles its height in a second pass.
    for (int pass = 0; pass < 3; pass++) {
      robot.interact(() -> {});
    }
    Bounds list = seen(Objects.requireNonNull(window.shell.getLeft()));
    double ends = window.scene.getWidth();
    inside(where, center(), list.getMaxX(), ends, wrong);
    for (String kind : List.of(".place-head", ".place-work", ".place-foot", ".place-side")) {
      for (Node each : center().lookupAll(kind)) {
        inside(where, each, list.getMaxX(), ends, wrong);
      }
    }
    texts(where, list.getMaxX(), ends, wrong);
  }

  /** Texts too: a line that is cut at the window's edge is not read. */
  private void texts(String where, double from, double until, List<String> wrong) {
    for (Node each : center().lookupAll(".label, .button, .toggle-button")) {
      if (!isInTable(each) && each.getLayoutBounds().getWidth() > 0) {
        inside(where, each, from, until, wrong);
      }
    }
  }

  /** A table scrolls sideways. */
  private static boolean isInTable(Node node) {
    for (Node at = node; at != null; at = at.getParent()) {
      if (at instanceof TableView) {
        return true;
      }
    }
    return false;
  }

  private static void inside(
      String where, Node each, double from, double until, List<String> wrong) {
    if (each.getScene() == null || !each.isVisible()) {
      return;
    }
    Bounds at = seen(each);
    if (at.getMinX() < from - SNAP || at.getMaxX() > until + SNAP) {
      wrong.add(where + ": " + each + " from " + at.getMinX() + " to " + at.getMaxX());
    }
  }

  private static List<ToggleButton> buttons(Node row) {
    return row.lookupAll(".toggle-button").stream().map(ToggleButton.class::cast).toList();
  }

  private Node center() {
    return Objects.requireNonNull(window.shell.getCenter());
  }

  private static Bounds seen(Node node) {
    return node.localToScene(node.getLayoutBounds());
  }
}
