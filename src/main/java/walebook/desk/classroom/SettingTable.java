package walebook.desk.classroom;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import javafx.collections.ObservableList;
import javafx.scene.control.TableColumn;
import javafx.scene.layout.BorderPane;
import org.jspecify.annotations.Nullable;
import walebook.compare.SettingRow;
import walebook.desk.common.ColumnTable;
import walebook.quantity.Show;
import walebook.statistics.FiveNumbers;
import walebook.words.Words;

/**
 * The table of settings: how many, how many held, and the middle of what was measured on them. What
 * would make it wider than the window stands below it for the row that is opened.
 */
final class SettingTable extends BorderPane {
  private static final int ROWS = 8;
  private static final double LINES = 1.5;

  private final Words words;
  private final ObservableList<ComparedRow> rows;
  private final ColumnTable<ComparedRow> table = new ColumnTable<>();
  private final TableColumn<ComparedRow, ComparedRow> gaveAt;

  SettingTable(Words words, ObservableList<ComparedRow> rows) {
    this.words = words;
    this.rows = rows;
    table.setAccessibleText(words.say("desk.class.table.says"));
    TableColumn<ComparedRow, String> setting =
        table.words(words.say("desk.class.col.setting"), 20, ComparedRow::setting);
    count(words.say("desk.class.col.pieces"), 4.6, row -> row.found().pieces());
    count(words.say("desk.class.col.students"), 6, row -> row.found().students());
    table.drawings(
        words, words.say("desk.class.col.held"), 12, ComparedRow::heldShare, ComparedRow::bar);
    gaveAt =
        table.figures(
            "",
            13.5,
            row -> ComparedRow.order(ofGave(row)),
            row -> ComparedRow.spread(words, ofGave(row), 0));
    middle(words.say("desk.class.col.edge"), 5.8, 1, SettingRow::edgeChange);
    middle(words.say("desk.class.col.grade"), 4, 0, SettingRow::grade);
    count(words.say("desk.class.col.faults"), 5, row -> row.found().withFault());
    table.takesRest(setting, 13);
    table.asHighAs(ROWS, LINES);
    setCenter(table);
  }

  void opens(Consumer<ComparedRow> open) {
    table.opens(open);
  }

  /** Steps that show the rows of now. */
  List<Runnable> others() {
    name();
    return table.others(List.copyOf(rows));
  }

  private void name() {
    gaveAt.setText(words.say(isOfShares() ? "desk.class.col.share" : "desk.class.col.stretch"));
  }

  /** Shares of the cloth's stretch where any is known, bare stretches where none is. */
  private boolean isOfShares() {
    return rows.stream().anyMatch(row -> row.found().shareOfGave() != null);
  }

  private @Nullable FiveNumbers ofGave(ComparedRow row) {
    return isOfShares() ? row.found().shareOfGave() : row.found().stretchOfGave();
  }

  private void middle(
      String title, double ems, int decimals, Function<SettingRow, @Nullable FiveNumbers> of) {
    table.figures(
        title,
        ems,
        row -> ComparedRow.order(of.apply(row.found())),
        row -> {
          FiveNumbers five = of.apply(row.found());
          return five == null ? "–" : Show.fixed(five.median(), decimals);
        });
  }

  private void count(String title, double ems, ToIntFunction<ComparedRow> number) {
    table.figures(
        title,
        ems,
        row -> (double) number.applyAsInt(row),
        row -> Integer.toString(number.applyAsInt(row)));
  }
}
