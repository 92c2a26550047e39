package walebook.desk.classroom;

import java.util.List;
import java.util.function.Consumer;
import javafx.scene.control.TableColumn;
import javafx.scene.layout.BorderPane;
import org.jspecify.annotations.Nullable;
import walebook.compare.Outcome;
import walebook.desk.common.ColumnTable;
import walebook.words.Words;

/** Settings with raw and adjusted side by side; one table for every comparison. */
final class FairRows extends BorderPane {
  private static final int ROWS = 8;
  private static final double LINES = 1.5;

  private final Words words;
  private final ColumnTable<FairFound.Row> table = new ColumnTable<>();
  private final TableColumn<FairFound.Row, FairFound.Row> raw;
  private final TableColumn<FairFound.Row, FairFound.Row> middle;

  FairRows(Words words, Consumer<FairFound.Row> open) {
    this.words = words;
    table.setAccessibleText(words.say("desk.class.table.says"));
    var setting = table.words(words.say("desk.class.col.setting"), 20, FairFound.Row::setting);
    table.figures(
        words.say("desk.class.col.pieces"),
        4.6,
        row -> (double) row.found().pieces(),
        row -> Integer.toString(row.found().pieces()));
    table.figures(
        words.say("desk.class.col.students"),
        6,
        row -> (double) row.found().students(),
        row -> Integer.toString(row.found().students()));
    raw = table.figures("", 8.5, FairRows::rawOrder, FairFound.Row::raw);
    middle = table.figures("", 11, row -> middleOrder(row), FairFound.Row::middle);
    table.figures(
        words.say("desk.class.col.limits"), 9.5, row -> middleOrder(row), FairFound.Row::limits);
    table.drawings(
        words, words.say("desk.class.col.dots"), 13, row -> middleOrder(row), FairFound.Row::bar);
    table.takesRest(setting, 13);
    table.asHighAs(ROWS, LINES);
    table.opens(open);
    setCenter(table);
  }

  /** Names the columns after what was asked. */
  void head(FairFound found) {
    boolean rate = found.comparison().question().outcome().isRate();
    raw.setText(words.say(rate ? "desk.class.col.held-of" : "desk.class.col.raw"));
    middle.setText(words.say(middle(found)));
  }

  /** Steps that show what was found. */
  List<Runnable> others(FairFound found) {
    return table.others(found.rows());
  }

  private static String middle(FairFound found) {
    Outcome outcome = found.comparison().question().outcome();
    if (outcome.isRate()) {
      return "desk.class.col.share-held";
    }
    boolean adjusted = found.rows().stream().anyMatch(row -> row.found().adjusted() != null);
    return adjusted ? "desk.class.col.adjusted" : "desk.class.col.half-by";
  }

  private static Double middleOrder(FairFound.Row row) {
    Double least = row.found().atLeast();
    return least == null ? orNaN(row.found().middle()) : least;
  }

  private static Double rawOrder(FairFound.Row row) {
    var mean = row.found().raw();
    return mean == null ? middleOrder(row) : Double.valueOf(mean.mean());
  }

  private static Double orNaN(@Nullable Double value) {
    return value == null ? Double.NaN : value;
  }
}
