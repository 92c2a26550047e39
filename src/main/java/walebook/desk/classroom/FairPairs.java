package walebook.desk.classroom;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.TableColumn;
import javafx.scene.layout.BorderPane;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.ColumnTable;
import walebook.desk.common.WrappedCell;
import walebook.words.Words;

/** Every two settings; p-values only where they are asked for. One table for every comparison. */
final class FairPairs extends BorderPane {
  private static final int ROWS = 8;
  private static final double LINES = 1.5;

  private final ColumnTable<FairFound.Pair> table = new ColumnTable<>();
  private final TableColumn<FairFound.Pair, FairFound.Pair> p;

  FairPairs(Words words) {
    table.setAccessibleText(words.say("desk.class.pairs.title"));
    var first = table.words(words.say("desk.class.col.first"), 16, FairFound.Pair::first);
    table
        .words(words.say("desk.class.col.second"), 15.3, FairFound.Pair::second)
        .setCellFactory(WrappedCell::new);
    table.figures(
        words.say("desk.class.col.apart"),
        6.5,
        pair -> orNaN(pair.found().estimate()),
        FairFound.Pair::apart);
    table.figures(
        words.say("desk.class.col.limits"),
        10.7,
        pair -> orNaN(pair.found().low()),
        FairFound.Pair::limits);
    table
        .words(words.say("desk.class.col.can-say"), 11, FairFound.Pair::says)
        .setCellFactory(WrappedCell::new);
    p =
        table.figures(
            words.say("desk.class.col.p"),
            6.5,
            pair -> orNaN(pair.found().p()),
            pair -> FairViewModel.chance(pair.found().p()));
    p.setVisible(false);
    table.takesRest(first, 13);
    table.asHighAs(ROWS, LINES);
    setCenter(table);
  }

  /** Steps that show what was found. */
  List<Runnable> others(FairFound found) {
    List<Runnable> steps = new ArrayList<>();
    if (p.isVisible() != found.pValues()) {
      steps.add(() -> p.setVisible(found.pValues()));
    }
    steps.addAll(table.others(found.pairs()));
    return steps;
  }

  private static Double orNaN(@Nullable Double value) {
    return value == null ? Double.NaN : value;
  }
}
