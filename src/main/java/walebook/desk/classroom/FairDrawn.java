package walebook.desk.classroom;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import walebook.act.classroom.SettingWords;
import walebook.compare.Factor;
import walebook.compare.FactorTables;
import walebook.compare.FairComparison;
import walebook.compare.FairRow;
import walebook.compare.Lasting;
import walebook.compare.Outcome;
import walebook.drawing.DotPlot;
import walebook.drawing.DotRow;
import walebook.drawing.HeatTable;
import walebook.drawing.SmallMultiples;
import walebook.statistics.AdjustedMean;
import walebook.statistics.Interval;
import walebook.words.Words;

/** A fair comparison as plots: each piece a dot, over the interval of what its setting does. */
final class FairDrawn {
  private static final int SERIES = 5;
  private static final int LONGEST = 34;

  private final Words words;
  private final SettingWords settings;

  FairDrawn(Words words) {
    this.words = words;
    this.settings = new SettingWords(words);
  }

  /**
   * Where a setting's middle lies.
   *
   * @param low null with {@code high} when no interval can be given
   */
  record Middle(@Nullable Double at, @Nullable Double low, @Nullable Double high) {
    static Middle of(FairRow row, Outcome outcome, double confidence) {
      AdjustedMean adjusted = row.adjusted();
      if (adjusted != null) {
        Interval interval = adjusted.interval();
        return interval == null
            ? new Middle(adjusted.mean(), null, null)
            : new Middle(adjusted.mean(), interval.low(), interval.high());
      }
      Interval held = row.heldInterval(confidence);
      if (outcome.isRate() && held != null && row.held() != null) {
        return new Middle(100 * row.held().share(), 100 * held.low(), 100 * held.high());
      }
      Lasting lasting = row.lasting();
      return lasting == null
          ? new Middle(null, null, null)
          : new Middle(lasting.median(), lasting.low(), lasting.high());
    }
  }

  /** The axis's name. */
  String axis(Outcome outcome) {
    return words.say(
        switch (outcome) {
          case SEAM_SHARE -> "desk.class.axis.seam-share";
          case SEAM_STRETCH -> "desk.class.axis.seam-stretch";
          case EDGE_CHANGE -> "desk.class.axis.edge-change";
          case GRADE -> "desk.class.axis.grade";
          case HELD -> "desk.class.axis.held";
          case TIME -> "desk.class.axis.time";
        });
  }

  /** One plot of all settings; null when no piece has a value. */
  @Nullable DotPlot plot(FairComparison found) {
    if (found.isEmpty()) {
      return null;
    }
    return new DotPlot(axis(found.question().outcome()), rows(found), null);
  }

  List<DotRow> rows(FairComparison found) {
    List<String> series = found.rows().stream().map(row -> first(row.levels())).distinct().toList();
    List<DotRow> rows = new ArrayList<>();
    for (FairRow row : found.rows()) {
      int nth = series.size() > SERIES ? 0 : series.indexOf(first(row.levels()));
      rows.add(row(found, row, nth));
    }
    return rows;
  }

  private DotRow row(FairComparison found, FairRow row, int series) {
    Outcome outcome = found.question().outcome();
    Middle middle = Middle.of(row, outcome, found.question().confidence());
    boolean both = middle.low() != null && middle.high() != null;
    List<DotRow.Dot> dots = new ArrayList<>();
    row.values().rising((value, times) -> dots.addAll(dots(value(value, outcome), false, times)));
    row.lowerBounds().rising((value, times) -> dots.addAll(dots(value, true, times)));
    return new DotRow(
        settings.brief(found.factors(), row.levels(), LONGEST),
        dots,
        middle.at(),
        both ? middle.low() : null,
        both ? middle.high() : null,
        series);
  }

  /** Pieces of one value are alike in a plot, so that they share a dot. */
  private static List<DotRow.Dot> dots(double value, boolean held, int times) {
    return Collections.nCopies(times, new DotRow.Dot(value, held));
  }

  static double value(double found, Outcome outcome) {
    return outcome.isRate() ? 100 * found : found;
  }

  /** A setting's levels in one line. */
  String setting(List<Factor> factors, List<String> levels) {
    return settings.setting(factors, levels);
  }

  /** Each factor by itself; null with fewer than two. */
  @Nullable SmallMultiples single(FactorTables tables) {
    List<SmallMultiples.Panel> panels = new ArrayList<>();
    for (FairComparison each : tables.single()) {
      DotPlot plot = plot(each);
      if (plot != null) {
        String title = settings.factor(each.factors().get(0));
        panels.add(new SmallMultiples.Panel(title, plot));
      }
    }
    return panels.size() < 2 ? null : new SmallMultiples(panels);
  }

  /** Every two factors against each other; null with fewer than two. */
  @Nullable SmallMultiples grids(FactorTables tables, Outcome outcome) {
    List<SmallMultiples.Panel> panels =
        tables.pairs().stream()
            .map(
                grid ->
                    new SmallMultiples.Panel(
                        words.say(
                            "desk.class.grid.title",
                            settings.factor(grid.row()),
                            settings.factor(grid.column())),
                        grid(grid, outcome)))
            .toList();
    return panels.isEmpty() ? null : new SmallMultiples(panels);
  }

  private HeatTable grid(FactorTables.Grid grid, Outcome outcome) {
    Function<String, String> row = level -> settings.level(grid.row(), level);
    Function<String, String> column = level -> settings.level(grid.column(), level);
    List<List<HeatTable.Cell>> cells = new ArrayList<>();
    for (String atRow : grid.rows()) {
      List<HeatTable.Cell> line = new ArrayList<>();
      for (String atColumn : grid.columns()) {
        FactorTables.Cell cell = grid.cell(atRow, atColumn);
        line.add(cell == null ? new HeatTable.Cell(null, 0) : cell(cell));
      }
      cells.add(line);
    }
    return new HeatTable(
        axis(outcome),
        grid.rows().stream().map(row).toList(),
        grid.columns().stream().map(column).toList(),
        cells);
  }

  private static HeatTable.Cell cell(FactorTables.Cell cell) {
    if (cell.atLeast() != null) {
      return new HeatTable.Cell(cell.atLeast(), cell.pieces(), HeatTable.Kind.AT_LEAST);
    }
    boolean half = cell.mean() == null && cell.median() != null;
    HeatTable.Kind kind = half ? HeatTable.Kind.HALF : HeatTable.Kind.EXACT;
    return new HeatTable.Cell(cell.shown(), cell.pieces(), kind);
  }

  private static String first(List<String> levels) {
    return levels.isEmpty() ? "" : levels.get(0);
  }
}
