package walebook.desk.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import walebook.desk.PlannedClass;
import walebook.desk.common.Session;
import walebook.desk.common.Worker;
import walebook.quantity.Unit;
import walebook.words.Words;

@ExtendWith(ApplicationExtension.class)
@SuppressWarnings("NullAway.Init")
class AnswersPaneTest {
  private PlannedClass made;
  private ScrollPane scroll;

  @Start
  void start(Stage stage) throws Exception {
    made = PlannedClass.in(Files.createTempDirectory("answers").resolve("a.walebook"), 1);
    Session session =
        made.session(Worker.sameThread(), new PlannedClass.OneFile(Path.of("none.xlsx")));
    session.schoolClassProperty().set(made.room.schoolClass);
    session.studentProperty().set(made.room.first);
    SheetViewModel model = new SheetViewModel(session, Unit.CM);
    model.begin();
    type(model, "cloth", made.room.cloth.id().toString());
    type(model, "finished-chest", "80");
    type(model, "body-chest", "90");
    type(model, "opening-neckline", "50");
    type(model, "body-head", "57.1");
    type(model, "machine-kind", "overlocker");
    type(model, "stitch", "514");
    type(model, "neckline-seam", "yes");
    scroll = new ScrollPane(new AnswersPane(Words.english(), model));
    scroll.setFitToWidth(true);
    stage.setScene(new Scene(scroll, 320, 300));
    stage.show();
  }

  private static void type(SheetViewModel model, String field, String text) {
    model.fields().field(field).text().set(text);
  }

  @AfterEach
  void close() {
    made.close();
  }

  @Test
  void theAnswersStayWhereTheyAreWhenAPieceIsPlanned(FxRobot robot) {
    Words words = Words.english();
    Button plan = robot.lookup(words.say("desk.decide.plan")).queryButton();
    robot.interact(plan::requestFocus);
    double before = scroll.getVvalue();
    robot.interact(plan::fire);
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(plan.getText()).isEqualTo(words.say("desk.decide.plan.there"));
    assertThat(plan.isFocused()).isTrue();
    assertThat(scroll.getVvalue()).isEqualTo(before);
    int planned =
        made.room.book.lessons().planOf(made.room.schoolClass.id(), made.room.first.id()).size();
    robot.interact(plan::fire);
    assertThat(made.room.book.lessons().planOf(made.room.schoolClass.id(), made.room.first.id()))
        .hasSize(planned);
  }
}
