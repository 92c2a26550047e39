package walebook.desk.lessons;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
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
            KitViewModel model = new KitViewModel(session, Packs.seam(), null);
            KitPane pane =
                new KitPane(
                    session.words(),
                    model,
                    new ScrapsViewModel(session, model),
                    room.book.cloths().all());
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
  void scrapsAreAskedAboutByKeysAlone(FxRobot robot) {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      Session session = Sessions.of(room);
      KitViewModel model = new KitViewModel(session, Packs.seam(), null);
      ScrapsViewModel scraps = new ScrapsViewModel(session, model);
      robot.interact(
          () -> {
            KitPane pane = new KitPane(session.words(), model, scraps, List.of());
            Scene scene = new Scene(new ScrollPane(pane), 1000, 700);
            new Look(Theme.LIGHT, TextSize.USUAL).dress(scene);
            stage.setScene(scene);
            stage.show();
            model.field(KitViewModel.STUDENTS).text().set("1");
            model.workOut();
          });
      robot.interact(() -> cells().get(0).requestFocus());
      robot.write("40 cm").push(KeyCode.ENTER).write("20 cm").push(KeyCode.ENTER).write("3");
      robot.push(KeyCode.TAB);
      assertThat(cells()).hasSize(9);
      for (int i = 0; i < 6; i++) {
        robot.push(KeyCode.TAB);
      }
      robot.push(KeyCode.SPACE);
      robot.interact(
          () -> {
            assertThat(scraps.saysProperty().get()).isEqualTo("Yes: all 9 pieces come out.");
            ScrapsPane pane = (ScrapsPane) stage.getScene().getRoot().lookup(".scraps");
            assertThat(pane.lookupAll(".picture-pane")).isNotEmpty();
            for (TextField each : cells()) {
              assertThat(each.getAccessibleText()).contains("row");
            }
          });
    }
  }

  private List<TextField> cells() {
    return stage.getScene().getRoot().lookup(".scraps").lookupAll(".text-field").stream()
        .filter(TextField.class::isInstance)
        .map(TextField.class::cast)
        .toList();
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
