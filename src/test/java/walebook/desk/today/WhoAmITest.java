package walebook.desk.today;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import javafx.scene.Scene;
import javafx.scene.control.ListCell;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import walebook.book.Classroom;
import walebook.book.Ids;
import walebook.desk.Sessions;
import walebook.desk.look.Look;
import walebook.desk.look.TextSize;
import walebook.desk.look.Theme;
import walebook.record.Student;
import walebook.record.Tier;
import walebook.words.Words;

@ExtendWith(ApplicationExtension.class)
class WhoAmITest {
  private static final String LONG =
      "Esi Lightwater-Harbourmaster of the Long Eastern Quay, Upper Hall";

  @TempDir Path folder;

  // Made with the stage: controls need the toolkit, which may not run before.
  @SuppressWarnings("NullAway.Init")
  private Stage stage;

  @Start
  void start(Stage given) {
    stage = given;
    stage.show();
  }

  @Test
  void aLongNameIsReadWhole(FxRobot robot) {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      Student esi = new Student(Ids.next(), LONG, "S09", Tier.STANDARD, Classroom.FRESH);
      room.book.students().add(esi);
      room.book.enrolments().join(room.schoolClass.id(), esi.id(), room.term.startsOn());
      robot.interact(
          () -> {
            TodayViewModel model = new TodayViewModel(Sessions.of(room));
            Scene scene = new Scene(new TodayView(Words.english(), model), 1090, 800);
            new Look(Theme.LIGHT, TextSize.USUAL).dress(scene);
            stage.setScene(scene);
          });
      robot.interact(() -> {});
      List<ListCell<?>> cells =
          robot.lookup(".names .list-cell").queryAll().stream()
              .<ListCell<?>>map(each -> (ListCell<?>) each)
              .filter(each -> LONG.equals(each.getText()))
              .toList();
      assertThat(cells).hasSize(1);
      Text seen = (Text) cells.get(0).lookup(".text");
      assertThat(seen.getText().replace("\n", " ").replaceAll(" +", " ")).isEqualTo(LONG);
      assertThat(seen.getLayoutBounds().getHeight()).isLessThanOrEqualTo(cells.get(0).getHeight());
    }
  }
}
