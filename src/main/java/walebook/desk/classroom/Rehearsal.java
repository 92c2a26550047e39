package walebook.desk.classroom;

import java.util.List;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableRow;
import javafx.scene.control.TableView;
import javafx.scene.control.skin.CheckBoxSkin;
import javafx.scene.control.skin.ComboBoxListViewSkin;
import javafx.scene.control.skin.TableCellSkin;
import javafx.scene.control.skin.TableRowSkin;
import javafx.scene.control.skin.TableViewSkin;
import javafx.scene.layout.Pane;
import walebook.compare.Outcome;
import walebook.desk.common.ChoiceField;
import walebook.desk.common.Fold;
import walebook.desk.common.NumberEntry;
import walebook.desk.common.NumberField;
import walebook.desk.common.PicturePane;
import walebook.drawing.DotPlot;
import walebook.drawing.DotRow;
import walebook.drawing.Drawing;
import walebook.drawing.HeatTable;
import walebook.drawing.IntervalBar;
import walebook.drawing.ScatterBand;
import walebook.drawing.SmallMultiples;
import walebook.drawing.ValueBar;
import walebook.words.Words;

/**
 * Makes once, away from the window and for nobody to see, what a comparison is shown with. Most of
 * what the first one takes is loading classes, and that can be done while nobody waits: whatever is
 * not in a window yet may be made on any thread.
 */
public final class Rehearsal {
  private static final double WIDE = 700;

  private Rehearsal() {}

  /** Plays it through; safe on any thread, touches no book. */
  public static void play(Words words) {
    choice(words);
    new NumberField(words, "", "", NumberEntry.plain("matters"));
    new Fold("", new Pane());
    CheckBox box = new CheckBox();
    box.setSkin(new CheckBoxSkin(box));
    Sentences.card(List.of("", ""), " ");
    List.of(
            new SettingTable(words, FXCollections.observableArrayList()),
            new FairRows(words, row -> {}),
            new FairPairs(words))
        .forEach(each -> dress((TableView<?>) each.getCenter()));
    new Canvas(WIDE, 1).getGraphicsContext2D().strokeLine(0, 0, WIDE, 0);
    List<Drawing> again = drawings();
    for (Drawing each : drawings()) {
      each.at(WIDE, words);
      PicturePane pane = new PicturePane(words, each);
      // Beside its like, as when a cell is given the row that it had.
      again.forEach(pane::show);
    }
  }

  private static void choice(Words words) {
    ChoiceField<Outcome> field =
        new ChoiceField<>(
            words,
            "",
            FXCollections.observableArrayList(Outcome.values()),
            new SimpleObjectProperty<>(Outcome.GRADE),
            Outcome::key);
    ComboBox<Outcome> box = field.box();
    box.setSkin(new ComboBoxListViewSkin<>(box));
  }

  /** Gives a table, a row and its cells what the window would give them. */
  private static <T> void dress(TableView<T> table) {
    table.setSkin(new TableViewSkin<>(table));
    TableRow<T> row = new TableRow<>();
    row.updateTableView(table);
    row.setSkin(new TableRowSkin<>(row));
    for (TableColumn<T, ?> each : table.getColumns()) {
      dress(each);
    }
  }

  private static <T, S> void dress(TableColumn<T, S> column) {
    TableCell<T, S> cell = column.getCellFactory().call(column);
    cell.setSkin(new TableCellSkin<>(cell));
  }

  private static List<Drawing> drawings() {
    DotRow row = new DotRow("", List.of(new DotRow.Dot(1, false)), 1.0, 0.5, 1.5, 0);
    DotPlot plot = new DotPlot("", List.of(row, row), null);
    return List.of(
        plot,
        new ValueBar(0, 2, row),
        new IntervalBar(1, 2, 10, 90),
        new SmallMultiples(List.of(new SmallMultiples.Panel("", plot))),
        new ScatterBand(
            "",
            "",
            List.of(new ScatterBand.Point(1, 1), new ScatterBand.Point(2, 2)),
            List.of(new ScatterBand.Edge(1, 0.5, 1, 1.5), new ScatterBand.Edge(2, 1.5, 2, 2.5))),
        new HeatTable("", List.of(""), List.of(""), List.of(List.of(new HeatTable.Cell(1.0, 1)))));
  }
}
