package walebook.desk.classroom;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import org.jspecify.annotations.Nullable;
import walebook.compare.Outcome;
import walebook.desk.common.ColumnTable;
import walebook.desk.common.WrappedCell;
import walebook.drawing.DotPlot;
import walebook.drawing.DotRow;
import walebook.drawing.HeatTable;
import walebook.drawing.SmallMultiples;
import walebook.quantity.Show;
import walebook.words.Words;

/** The tables of a fair comparison, on the screen and for the clipboard. */
final class FairTables {
  private static final int ROWS = 8;
  private static final double LINES = 1.5;

  private FairTables() {}

  /** What happens to a row that is opened. */
  @FunctionalInterface
  interface Opened {
    void row(FairFound.Row row);
  }

  /** Settings with raw and adjusted side by side. */
  static Node settings(Words words, FairFound found, Opened open) {
    ColumnTable<FairFound.Row> table = new ColumnTable<>();
    table.setAccessibleText(words.say("desk.class.table.says"));
    Outcome outcome = found.comparison().question().outcome();
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
    table.figures(
        words.say(outcome.isRate() ? "desk.class.col.held-of" : "desk.class.col.raw"),
        8,
        FairTables::rawOrder,
        FairFound.Row::raw);
    table.figures(words.say(middle(found)), 10, row -> middleOrder(row), FairFound.Row::middle);
    table.figures(
        words.say("desk.class.col.limits"), 9.5, row -> middleOrder(row), FairFound.Row::limits);
    table.drawings(
        words, words.say("desk.class.col.dots"), 13, row -> middleOrder(row), FairFound.Row::bar);
    table.takesRest(setting, 13);
    table.getItems().setAll(found.rows());
    table.asHighAs(ROWS, LINES);
    table.opens(open::row);
    return table;
  }

  private static String middle(FairFound found) {
    if (found.comparison().question().outcome().isRate()) {
      return "desk.class.col.share-held";
    }
    boolean adjusted = found.rows().stream().anyMatch(row -> row.found().adjusted() != null);
    return adjusted ? "desk.class.col.adjusted" : "desk.class.col.half-by";
  }

  private static Double middleOrder(FairFound.Row row) {
    return orNaN(row.found().middle());
  }

  private static Double rawOrder(FairFound.Row row) {
    var raw = row.found().raw();
    return raw == null ? orNaN(row.found().middle()) : Double.valueOf(raw.mean());
  }

  private static Double orNaN(@Nullable Double value) {
    return value == null ? Double.NaN : value;
  }

  /** Every two settings; p-values only where they are asked for. */
  static Node pairs(Words words, FairFound found) {
    ColumnTable<FairFound.Pair> table = new ColumnTable<>();
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
    if (found.pValues()) {
      table.figures(
          words.say("desk.class.col.p"),
          5,
          pair -> orNaN(pair.found().p()),
          pair -> pair.found().p() == null ? "–" : Show.fixed(pair.found().p(), 3));
    }
    table.takesRest(first, 13);
    table.getItems().setAll(found.pairs());
    table.asHighAs(ROWS, LINES);
    return table;
  }

  static List<String> header(Words words) {
    return List.of(
        words.say("desk.class.col.setting"),
        words.say("desk.class.col.pieces"),
        words.say("desk.class.col.students"),
        words.say("desk.class.col.raw"),
        words.say("desk.class.col.middle"),
        words.say("desk.class.col.limits"));
  }

  /** Every two settings for the clipboard; the limits each in a cell of its own. */
  static List<List<String>> pairs(Words words, List<FairFound.Pair> pairs, boolean pValues) {
    List<List<String>> lines = new ArrayList<>();
    List<String> header =
        new ArrayList<>(
            List.of(
                words.say("desk.class.col.first"),
                words.say("desk.class.col.second"),
                words.say("desk.class.col.apart"),
                words.say("desk.class.col.from"),
                words.say("desk.class.col.to"),
                words.say("desk.class.col.can-say")));
    if (pValues) {
      header.add(words.say("desk.class.col.p"));
    }
    lines.add(header);
    for (FairFound.Pair pair : pairs) {
      List<String> line =
          new ArrayList<>(
              List.of(
                  pair.first(),
                  pair.second(),
                  pair.apart(),
                  FairViewModel.number(pair.found().low()),
                  FairViewModel.number(pair.found().high()),
                  pair.says()));
      if (pValues) {
        line.add(pair.found().p() == null ? "–" : Show.fixed(pair.found().p(), 3));
      }
      lines.add(line);
    }
    return lines;
  }

  /** The points of a scatter. */
  static List<List<String>> points(FairFound.Against of) {
    List<List<String>> lines = new ArrayList<>();
    lines.add(List.of(of.plot().across(), of.plot().up()));
    of.plot()
        .points()
        .forEach(each -> lines.add(List.of(Show.upTo(each.x(), 2), Show.fixed(each.y(), 1))));
    return lines;
  }

  /** A heat table's numbers. */
  static List<List<String>> grid(HeatTable grid) {
    List<List<String>> lines = new ArrayList<>();
    List<String> header = new ArrayList<>(List.of(""));
    for (String each : grid.columns()) {
      header.add(each);
      header.add("n");
    }
    lines.add(header);
    for (int r = 0; r < grid.rows().size(); r++) {
      List<String> line = new ArrayList<>(List.of(grid.rows().get(r)));
      for (HeatTable.Cell cell : grid.cells().get(r)) {
        line.add(FairViewModel.number(cell.value()));
        line.add(Integer.toString(cell.pieces()));
      }
      lines.add(line);
    }
    return lines;
  }

  /** The numbers of all heat tables, one under the other with their titles. */
  static List<List<String>> grids(SmallMultiples all) {
    List<List<String>> lines = new ArrayList<>();
    for (SmallMultiples.Panel panel : all.panels()) {
      if (panel.drawing() instanceof HeatTable grid) {
        lines.add(List.of(panel.title()));
        lines.addAll(grid(grid));
      }
    }
    return lines;
  }

  /** Dots' middles and intervals of every small plot. */
  static List<List<String>> panels(Words words, SmallMultiples all) {
    List<List<String>> lines = new ArrayList<>();
    lines.add(
        List.of(
            words.say("desk.class.col.factor"),
            words.say("desk.class.col.setting"),
            words.say("desk.class.col.pieces"),
            words.say("desk.class.col.middle"),
            words.say("desk.class.col.limits")));
    for (SmallMultiples.Panel panel : all.panels()) {
      if (panel.drawing() instanceof DotPlot plot) {
        plot.rows().forEach(row -> lines.add(line(panel.title(), row)));
      }
    }
    return lines;
  }

  /** One row of dots as cells. */
  static List<String> line(String title, DotRow row) {
    return List.of(
        title,
        row.label(),
        Integer.toString(row.dots().size()),
        FairViewModel.number(row.median()),
        FairViewModel.limits(row.low(), row.high()));
  }
}
