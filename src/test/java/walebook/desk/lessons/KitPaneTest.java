package walebook.desk.lessons;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Objects;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.TableView;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import walebook.book.Classroom;
import walebook.desk.Sessions;
import walebook.desk.common.PicturePane;
import walebook.desk.common.Session;
import walebook.desk.look.Look;
import walebook.desk.look.TextSize;
import walebook.desk.look.Theme;
import walebook.kit.Kit;
import walebook.lesson.Packs;

/** The kit as it is shown, inside the place of lessons. */
@ExtendWith(ApplicationExtension.class)
class KitPaneTest {
  @TempDir Path folder;

  @SuppressWarnings("NullAway.Init")
  private Stage stage;

  @Start
  void start(Stage shown) {
    stage = shown;
  }

  @Test
  void listAndCuttingPlanStandBelowTheFields(FxRobot robot) {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      Session session = Sessions.of(room);
      robot.interact(
          () -> {
            KitViewModel model = new KitViewModel(session, Packs.seam());
            KitPane pane = new KitPane(session.words(), model, room.book.cloths().all());
            Scene scene = new Scene(pane, 1000, 700);
            new Look(Theme.LIGHT, TextSize.USUAL).dress(scene);
            stage.setScene(scene);
            stage.show();
            model.width(model.pack().plan().cloths().get(0)).text().set("150 cm");
            model.workOut();
            Kit kit = Objects.requireNonNull(model.kitProperty().get());
            pane.applyCss();
            pane.layout();
            TableView<?> table = (TableView<?>) pane.lookup(".table-view");
            assertThat(table.getItems()).hasSize(kit.lines().size());
            PicturePane picture = (PicturePane) pane.lookup(".picture-pane");
            assertThat(picture.getAccessibleText()).contains("18 pieces");
            pane.layout();
            assertThat(picture.getHeight()).isGreaterThan(200);
          });
    }
  }

  @Test
  void thePlaceOpensItFromThePackAndGoesBack(FxRobot robot) {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      Session session = Sessions.of(room);
      robot.interact(
          () -> {
            LessonsView view = new LessonsView(session, new Look(Theme.LIGHT, TextSize.USUAL));
            Scene scene = new Scene(view, 1280, 800);
            stage.setScene(scene);
            stage.show();
            press(view, session.words().say("desk.lessons.read"));
            press(view, session.words().say("desk.lessons.kit"));
            press(view, session.words().say("desk.lessons.kit.go"));
            press(view, session.words().say("desk.lessons.back"));
            press(view, session.words().say("desk.lessons.back"));
            press(view, session.words().say("desk.lessons.read"));
          });
    }
  }

  private static void press(LessonsView view, String text) {
    view.applyCss();
    view.layout();
    Button found =
        view.lookupAll(".button").stream()
            .filter(Button.class::isInstance)
            .map(Button.class::cast)
            .filter(each -> each.getText().equals(text))
            .findFirst()
            .orElseThrow(() -> new AssertionError("no button " + text));
    found.fire();
  }
}
