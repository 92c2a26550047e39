package walebook.desk.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javafx.scene.control.Button;
import javafx.scene.layout.Pane;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.book.open.SqliteFiles;
import walebook.desk.RoomBook;
import walebook.desk.Sessions;
import walebook.desk.common.InTurn;
import walebook.quantity.Unit;
import walebook.words.Words;

/** Where nothing is to be seen, one press leads to where something is. */
@SuppressWarnings("NullAway.Init")
@ExtendWith(ApplicationExtension.class)
class NothingThereTest {
  private static final Words WORDS = Words.english();

  private Classroom room;
  private Book empty;
  private final List<ClassBoard.Shown> boards = new ArrayList<>();
  private final Around around = new Around(notice -> {}, new InTurn());

  @Start
  void start(Stage stage) throws Exception {
    room = RoomBook.in(Files.createTempDirectory("nothing").resolve("room.walebook"));
    empty =
        new SqliteFiles()
            .make(
                Files.createTempDirectory("empty").resolve("empty.walebook"),
                "empty",
                false,
                Unit.MM,
                Classroom.CLOCK)
            .value();
    stage.show();
  }

  @AfterEach
  void close() {
    room.close();
    empty.close();
  }

  @Test
  void inALessonWithoutPiecesOnePressAsksAboutAllOfThem(FxRobot robot) {
    FiltersViewModel filters = new FiltersViewModel(Sessions.of(room));
    onePressAsksAboutAll(
        robot, filters, new ComparisonView(new ComparisonViewModel(filters), around));
  }

  @Test
  void soItDoesWhereNothingIsThereToReadAgainstAControl(FxRobot robot) {
    FiltersViewModel filters = new FiltersViewModel(Sessions.of(room));
    onePressAsksAboutAll(robot, filters, new ControlView(new ControlViewModel(filters), around));
  }

  private void onePressAsksAboutAll(FxRobot robot, FiltersViewModel filters, AskedPart<?> view) {
    robot.interact(
        () -> {
          view.shown(true);
          filters.clothProperty().set(new Choice(room.first.id(), "a cloth of nobody"));
        });
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(buttons(view)).containsExactly(WORDS.say("desk.class.ask-all"));
    robot.interact(() -> ((Button) view.lookup(".button")).fire());
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(filters.isNarrowed()).isFalse();
    assertThat(buttons(view)).doesNotContain(WORDS.say("desk.class.ask-all"));
  }

  @Test
  void inAnEmptyBookEveryPartSaysHowToBeginAndHasNothingForTheBoard(FxRobot robot) {
    FiltersViewModel filters = new FiltersViewModel(Sessions.of(empty));
    List<AskedPart<?>> parts =
        List.of(
            new ComparisonView(new ComparisonViewModel(filters), around),
            new FairView(new FairViewModel(filters), around),
            new ControlView(new ControlViewModel(filters), around),
            new AlikeView(new AlikeViewModel(filters), around),
            new TermsView(new TermsViewModel(filters, new SqliteFiles()), around),
            new GrowthView(new GrowthViewModel(filters), around));
    Set<String> begin =
        Set.of(
            WORDS.say("desk.class.empty.begin"),
            WORDS.say("desk.class.alike.begin"),
            WORDS.say("desk.class.progress.begin"));
    for (AskedPart<?> part : parts) {
      robot.interact(() -> part.shown(true));
      assertThat(buttons(part)).as(part.getClass().getSimpleName()).anyMatch(begin::contains);
      boards.clear();
      robot.interact(() -> part.showLarge(boards::add));
      assertThat(boards).hasSize(1);
      assertThat(boards.get(0).findings()).isEmpty();
    }
  }

  private static List<String> buttons(Pane part) {
    return part.lookupAll(".button").stream().map(each -> ((Button) each).getText()).toList();
  }
}
