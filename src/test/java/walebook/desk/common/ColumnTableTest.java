package walebook.desk.common;

import static java.util.Collections.nCopies;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javafx.geometry.Bounds;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollBar;
import javafx.scene.control.TableColumn;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import walebook.desk.look.Look;
import walebook.desk.look.TextSize;
import walebook.desk.look.Theme;

@SuppressWarnings("NullAway.Init")
@ExtendWith(ApplicationExtension.class)
class ColumnTableTest {
  private final Look look = new Look(Theme.DARK, TextSize.USUAL);

  /** Of a row and of the titles by the look's sheet, px. */
  private static final double ROW = 2.6 * TextSize.BODY_PX;

  private static final double HEAD = ROW;

  // No control can be made before the toolkit runs.
  private ColumnTable<Double> table;
  private Stage stage;

  @Start
  void start(Stage shown) {
    stage = shown;
    table = new ColumnTable<>();
    table.figures("width, mm", 8, value -> value, value -> value + " wide");
    table.getItems().setAll(10.0, 2.0, 7.0);
    Scene scene = new Scene(new VBox(table), 600, 300);
    look.dress(scene);
    stage.setScene(scene);
    stage.show();
  }

  @Test
  void columnsGrowWithTheText(FxRobot robot) {
    TableColumn<Double, ?> column = table.getColumns().get(0);
    assertThat(column.getWidth()).isEqualTo(8 * TextSize.BODY_PX);
    robot.interact(() -> look.textSizeProperty().set(new TextSize(200)));
    assertThat(column.getWidth()).isEqualTo(16 * TextSize.BODY_PX);
  }

  @Test
  void aFigureTooWideForItsColumnGoesOnBelow(FxRobot robot) {
    robot.interact(() -> table.getItems().setAll(-20937.25, 2.0));
    WaitForAsyncUtils.waitForFxEvents();
    List<String> seen =
        table.lookupAll(".table-cell .text").stream().map(each -> ((Text) each).getText()).toList();
    assertThat(seen)
        .contains("-20937.25\nwide", "2.0 wide")
        .noneMatch(each -> each.contains("..."));
  }

  @Test
  void figuresSortByValueNotByText(FxRobot robot) {
    robot.interact(() -> table.getSortOrder().add(table.getColumns().get(0)));
    assertThat(table.getItems()).containsExactly(2.0, 7.0, 10.0);
  }

  @Test
  void aTableIsHighEnoughForAWordThatIsWiderThanItsColumn(FxRobot robot) {
    ColumnTable<String> names = new ColumnTable<>();
    robot.interact(
        () -> {
          names.wrapped("student", 11.5, each -> each);
          names.asHighAs(12);
          names.getItems().setAll(nCopies(5, "Wilhelmina-Annegret Featherstonehaugh-Oy"));
          Scene scene = new Scene(new VBox(names), 600, 900);
          look.dress(scene);
          stage.setScene(scene);
        });
    WaitForAsyncUtils.waitForFxEvents();
    Bounds seen = names.localToScene(names.getLayoutBounds());
    List<Double> ends =
        names.lookupAll(".table-row-cell .cell-text").stream()
            .map(each -> each.localToScene(each.getLayoutBounds()).getMaxY())
            .toList();
    assertThat(ends).hasSizeGreaterThanOrEqualTo(5).allMatch(each -> each < seen.getMaxY());
  }

  /** 10 Feb, 2 May and 7 Mar: neither their words nor their first figures are in this order. */
  @Test
  void daysReadAsWordsAndSortByTheDay(FxRobot robot) {
    Map<Double, LocalDate> days =
        Map.of(
            10.0, LocalDate.of(2026, 2, 10),
            2.0, LocalDate.of(2026, 5, 2),
            7.0, LocalDate.of(2026, 3, 7));
    robot.interact(
        () -> {
          TableColumn<Double, Double> column =
              table.days("on", 8, each -> Objects.requireNonNull(days.get(each)));
          table.getSortOrder().setAll(List.of(column));
          table.applyCss();
          table.layout();
        });
    assertThat(table.getItems()).containsExactly(10.0, 7.0, 2.0);
    assertThat(table.lookupAll(".table-cell"))
        .extracting(cell -> ((Labeled) cell).getText())
        .contains("10 Feb 2026", "2 May 2026");
  }

  /** Else a strip of a row that is none stands below the last. */
  @Test
  void aTableIsAsHighAsItsRowsWithoutABarAndHigherWithOne(FxRobot robot) {
    robot.interact(
        () -> {
          table.getItems().setAll(10.0, 2.0);
          table.asHighAs(8);
        });
    robot.interact(() -> {});
    double empty = table.getPrefHeight() - 2 * ROW - HEAD;
    assertThat(empty).isBetween(0.0, ROW / 3);
    robot.interact(() -> table.getColumns().get(0).setPrefWidth(900));
    robot.interact(() -> {});
    assertThat(table.getPrefHeight()).isEqualTo(empty + 2 * ROW + HEAD + TextSize.BODY_PX);
  }

  /** Words are not cut in the middle, so that three lines' letters take four lines. */
  @Test
  void wordsThatGoOnBelowNeedNoBar(FxRobot robot) {
    String name = "Double-brushed poly-elastane with a very long descriptive name";
    robot.interact(
        () -> {
          table.getItems().setAll(10.0);
          table.wrapped("cloth", 12, value -> name);
          table.asHighAs(8);
        });
    robot.interact(() -> {});
    assertThat(table.lookupAll(".scroll-bar"))
        .filteredOn(bar -> ((ScrollBar) bar).getOrientation() == Orientation.VERTICAL)
        .noneMatch(Node::isVisible);
  }
}
