package walebook.desk.classroom;

import java.util.ArrayList;
import java.util.List;
import walebook.drawing.DotPlot;
import walebook.drawing.DotRow;
import walebook.drawing.HeatTable;
import walebook.drawing.SmallMultiples;
import walebook.quantity.Show;
import walebook.words.Words;

/** The tables of a fair comparison for the clipboard. */
final class FairTables {
  private FairTables() {}

  static List<String> header(Words words) {
    return List.of(
        words.say("desk.class.col.setting"),
        words.say("desk.class.col.pieces"),
        words.say("desk.class.col.students"),
        words.say("desk.class.col.raw"),
        words.say("desk.class.col.middle"),
        words.say("desk.class.col.from"),
        words.say("desk.class.col.to"));
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
        line.add(FairViewModel.chance(pair.found().p()));
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
  static List<List<String>> grid(Words words, HeatTable grid) {
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
        line.add(cell.shown(words));
        line.add(Integer.toString(cell.pieces()));
      }
      lines.add(line);
    }
    return lines;
  }

  /** The numbers of all heat tables, one under the other with their titles. */
  static List<List<String>> grids(Words words, SmallMultiples all) {
    List<List<String>> lines = new ArrayList<>();
    for (SmallMultiples.Panel panel : all.panels()) {
      if (panel.drawing() instanceof HeatTable grid) {
        lines.add(List.of(panel.title()));
        lines.addAll(grid(words, grid));
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
            words.say("desk.class.col.from"),
            words.say("desk.class.col.to")));
    for (SmallMultiples.Panel panel : all.panels()) {
      if (panel.drawing() instanceof DotPlot plot) {
        plot.rows().forEach(row -> lines.add(line(panel.title(), row)));
      }
    }
    return lines;
  }

  /** A plot's rows: how many dots, their middle and its interval. */
  static List<List<String>> dots(Words words, DotPlot plot) {
    List<List<String>> lines = new ArrayList<>();
    lines.add(
        List.of(
            words.say("desk.class.col.setting"),
            words.say("desk.class.col.pieces"),
            words.say("desk.class.col.middle"),
            words.say("desk.class.col.from"),
            words.say("desk.class.col.to")));
    for (DotRow row : plot.rows()) {
      List<String> line = line("", row);
      lines.add(line.subList(1, line.size()));
    }
    return lines;
  }

  /** One row of dots as cells. */
  private static List<String> line(String title, DotRow row) {
    return List.of(
        title,
        row.label(),
        Integer.toString(row.dots().size()),
        FairViewModel.number(row.median()),
        FairViewModel.number(row.low()),
        FairViewModel.number(row.high()));
  }
}
