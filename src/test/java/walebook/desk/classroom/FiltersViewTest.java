package walebook.desk.classroom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javafx.scene.Scene;
import javafx.scene.control.ComboBox;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import walebook.book.Classroom;
import walebook.desk.RoomBook;
import walebook.desk.Sessions;
import walebook.desk.common.InTurn;
import walebook.desk.look.Look;
import walebook.desk.look.TextSize;
import walebook.desk.look.Theme;
import walebook.words.Words;

/** The fields come one a frame; what stands below them must not jump meanwhile. */
@SuppressWarnings("NullAway.Init")
@ExtendWith(ApplicationExtension.class)
class FiltersViewTest {
  private Classroom room;
  private InTurn inTurn;
  private FiltersView filters;
  private final Look look = new Look(Theme.LIGHT, TextSize.USUAL);

  @Start
  void start(Stage stage) throws Exception {
    room = RoomBook.in(Files.createTempDirectory("filters").resolve("room.walebook"));
    inTurn = new InTurn();
    filters = new FiltersView(new FiltersViewModel(Sessions.of(room)), Words.english(), inTurn);
    Scene scene = new Scene(new VBox(filters), 1050, 700);
    look.dress(scene);
    stage.setScene(scene);
    stage.show();
  }

  @AfterEach
  void close() {
    room.close();
  }

  @Test
  void theirRoomIsKeptUntilTheyAreThere(FxRobot robot) throws Exception {
    for (int percent : new int[] {100, 200}) {
      List<Double> heights = new ArrayList<>();
      robot.interact(
          () -> {
            look.textSizeProperty().set(new TextSize(percent));
            filters.show(EnumSet.allOf(FiltersView.Ask.class));
            filters.applyCss();
            filters.heightProperty().addListener((from, old, now) -> heights.add((double) now));
          });
      WaitForAsyncUtils.waitFor(5, TimeUnit.SECONDS, inTurn::isAtRest);
      WaitForAsyncUtils.waitForFxEvents();
      assertThat(heights).isNotEmpty();
      assertThat(heights)
          .allSatisfy(each -> assertThat(each).isCloseTo(heights.get(0), within(2.0)));
    }
    assertThat(filters.lookupAll(".combo-box")).hasSize(3).allMatch(ComboBox.class::isInstance);
  }

  @Test
  void aPartThatIsLeftAtOnceLeavesNoRoomBehind(FxRobot robot) throws Exception {
    robot.interact(() -> filters.show(EnumSet.allOf(FiltersView.Ask.class)));
    robot.interact(() -> filters.show(EnumSet.of(FiltersView.Ask.LESSON)));
    WaitForAsyncUtils.waitFor(5, TimeUnit.SECONDS, inTurn::isAtRest);
    WaitForAsyncUtils.waitForFxEvents();
    double one = filters.getHeight();
    robot.interact(() -> filters.show(EnumSet.allOf(FiltersView.Ask.class)));
    WaitForAsyncUtils.waitFor(5, TimeUnit.SECONDS, inTurn::isAtRest);
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(filters.getHeight()).isGreaterThan(one);
    assertThat(filters.lookupAll(".combo-box")).hasSize(3);
    assertThat(filters.lookupAll(".check-box")).hasSize(2);
  }
}
