package walebook.desk.classroom;

import static java.util.Collections.nCopies;
import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.image.Image;
import javafx.scene.input.Clipboard;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import walebook.book.Classroom;
import walebook.desk.Sessions;
import walebook.desk.common.Notice;
import walebook.desk.look.Look;
import walebook.desk.look.TextSize;
import walebook.desk.look.Theme;
import walebook.drawing.DotPlot;
import walebook.drawing.DotRow;
import walebook.drawing.Drawing;
import walebook.drawing.HeatTable;
import walebook.drawing.HkPlot;
import walebook.drawing.ScatterBand;
import walebook.drawing.SmallMultiples;
import walebook.words.Words;

/** What the clipboard holds after a plot, or the numbers behind it, were copied. */
@ExtendWith(ApplicationExtension.class)
@SuppressWarnings("NullAway.Init")
class PlotCardTest {
  private static final Words WORDS = Words.english();
  private static final DotPlot DOTS = plot(3);

  private final List<Notice> told = new ArrayList<>();
  private Classroom room;
  private PlotCard card;

  @Start
  void start(Stage stage) throws Exception {
    room = Classroom.in(Files.createTempDirectory("plot").resolve("room.walebook"));
    card = new PlotCard(Sessions.of(room), told::add);
    Scene scene = new Scene(new VBox(card), 900, 600);
    new Look(Theme.LIGHT, TextSize.USUAL).dress(scene);
    stage.setScene(scene);
    stage.show();
  }

  @AfterEach
  void close() {
    room.close();
  }

  private static DotPlot plot(int rows) {
    List<DotRow.Dot> dots = List.of(new DotRow.Dot(40, false), new DotRow.Dot(60, true));
    return new DotPlot("%", nCopies(rows, new DotRow("a", dots, 50.0, 40.0, 60.0, 0)), null);
  }

  private void show(FxRobot robot, Drawing drawing) {
    robot.interact(
        () -> {
          card.show("title", "", drawing, () -> List.of(List.of("a", "b"), List.of("−1.5", "=x")));
          requireNonNull(card.getScene()).getRoot().layout();
        });
  }

  private void press(FxRobot robot, String key) {
    Button button =
        card.lookupAll(".button").stream()
            .map(Button.class::cast)
            .filter(each -> each.getText().equals(WORDS.say(key)))
            .findFirst()
            .orElseThrow();
    robot.interact(button::fire);
  }

  private Image copied(FxRobot robot) {
    told.clear();
    press(robot, "desk.class.copy-picture");
    List<Image> images = new ArrayList<>();
    robot.interact(() -> images.add(Clipboard.getSystemClipboard().getImage()));
    return requireNonNull(images.get(0));
  }

  @Test
  void eachKindOfPlotIsCopiedAsAPicture(FxRobot robot) {
    List<Drawing> all =
        List.of(
            DOTS,
            new SmallMultiples(nCopies(4, new SmallMultiples.Panel("x", DOTS))),
            new ScatterBand(
                "x",
                "y",
                List.of(new ScatterBand.Point(1, 2), new ScatterBand.Point(2, 3)),
                List.of()),
            new HeatTable(
                "%", List.of("a"), List.of("b"), List.of(List.of(new HeatTable.Cell(1.0, 1)))),
            new HkPlot(List.of(new HkPlot.Row("Ada", 0.5, 1.0, 1.5)), 1.2));
    for (Drawing each : all) {
      show(robot, each);
      Image image = copied(robot);
      assertThat(image.getWidth()).as("%s", each).isGreaterThan(2 * each.leastWidth() - 1);
      assertThat(colours(image)).as("%s", each).hasSizeGreaterThan(3);
      assertThat(told).extracting(Notice::says).containsExactly(WORDS.say("desk.class.copied"));
    }
  }

  @Test
  void aPlotOfManyRowsIsCopiedWhole(FxRobot robot) {
    DotPlot many = plot(400);
    show(robot, many);
    Image image = copied(robot);
    double wide = image.getWidth();
    double high = many.at(wide / 2, WORDS).height();
    assertThat(image.getHeight() / (2 * high)).isCloseTo(1, within(0.02));
    int last = (int) image.getHeight() - 1;
    Set<Integer> foot = new HashSet<>();
    for (int y = last - (int) (image.getHeight() / 100); y < last; y++) {
      for (int x = 0; x < wide; x++) {
        foot.add(image.getPixelReader().getArgb(x, y));
      }
    }
    assertThat(foot).as("what stands in the last hundredth").hasSizeGreaterThan(3);
  }

  @Test
  void theNumbersAreCopiedAsASpreadsheetTakesThem(FxRobot robot) {
    show(robot, DOTS);
    press(robot, "desk.class.copy-table");
    List<String> text = new ArrayList<>();
    robot.interact(() -> text.add(Clipboard.getSystemClipboard().getString()));
    assertThat(text).containsExactly("a\tb\n-1.5\t'=x\n");
    assertThat(told).extracting(Notice::says).contains(WORDS.say("desk.class.table-copied"));
  }

  private static Set<Integer> colours(Image image) {
    Set<Integer> seen = new HashSet<>();
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        seen.add(image.getPixelReader().getArgb(x, y));
      }
    }
    return seen;
  }
}
