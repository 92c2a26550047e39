package walebook.compare;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.record.Grain;
import walebook.record.ResultLine;
import walebook.statistics.Summary;

/**
 * A comparison taken apart: each factor by itself, and every two factors against each other.
 *
 * @param single one comparison for each factor with more than one level
 * @param pairs one table for every two such factors
 */
public record FactorTables(List<FairComparison> single, List<Grid> pairs) {

  /**
   * Two factors against each other.
   *
   * @param rows levels of the first factor
   * @param columns levels of the second
   * @param cells row by row, those without a piece left out
   */
  public record Grid(
      Factor row, Factor column, List<String> rows, List<String> columns, List<Cell> cells) {
    public Grid {
      rows = List.copyOf(rows);
      columns = List.copyOf(columns);
      cells = List.copyOf(cells);
    }

    /** The cell of two levels, null when nothing was sewn there. */
    public @Nullable Cell cell(String atRow, String atColumn) {
      return cells.stream()
          .filter(cell -> cell.row().equals(atRow) && cell.column().equals(atColumn))
          .findFirst()
          .orElse(null);
    }
  }

  /**
   * One cell, nothing adjusted.
   *
   * @param mean of the values as they are; null for a rate and where a piece only held
   * @param median by the product-limit estimate; null unless the outcome is a seam's
   * @param atLeast half of the pieces go at least so far; null where more is known
   * @param bounds how many pieces are only lower bounds
   * @param heldPercent share that held; null unless the outcome is a seam's or the rate
   */
  public record Cell(
      String row,
      String column,
      int pieces,
      int students,
      @Nullable Double mean,
      @Nullable Double median,
      @Nullable Double atLeast,
      int bounds,
      @Nullable Double heldPercent) {
    /** The number that stands for the cell: mean, median or share; null when there is none. */
    public @Nullable Double shown() {
      if (mean != null) {
        return mean;
      }
      return median != null || bounds > 0 ? median : heldPercent;
    }
  }

  public FactorTables {
    single = List.copyOf(single);
    pairs = List.copyOf(pairs);
  }

  /** Takes a question apart; parameters as for {@link CompareFairly#of}. */
  public static FactorTables of(
      List<ResultLine> pieces,
      FairQuestion question,
      Map<UUID, Map<Grain, ClothStretch>> stretches,
      Names names,
      Set<UUID> setAside,
      @Nullable MeasuringError measuring) {
    List<Factor> telling = Settings.of(pieces, question.factors(), names).telling();
    List<FairComparison> single = new ArrayList<>();
    List<Grid> pairs = new ArrayList<>();
    for (int i = 0; i < telling.size(); i++) {
      List<Factor> alone = List.of(telling.get(i));
      FairComparison one =
          CompareFairly.of(pieces, question.by(alone), stretches, names, setAside, measuring);
      if (one.factors().equals(alone)) {
        single.add(one);
      }
      for (int j = i + 1; j < telling.size(); j++) {
        List<Factor> two = List.of(telling.get(i), telling.get(j));
        FairComparison both =
            CompareFairly.of(pieces, question.by(two), stretches, names, setAside, measuring);
        if (both.factors().equals(two)) {
          pairs.add(grid(both));
        }
      }
    }
    return new FactorTables(single, pairs);
  }

  private static Grid grid(FairComparison both) {
    List<Cell> cells = both.rows().stream().map(FactorTables::cell).toList();
    Set<String> rows =
        cells.stream().map(Cell::row).collect(Collectors.toCollection(LinkedHashSet::new));
    List<String> columns =
        both.rows().stream()
            .map(row -> row.levels().subList(1, 2))
            .distinct()
            .sorted(CompareBySetting.byLevels())
            .map(level -> level.get(0))
            .toList();
    return new Grid(
        both.factors().get(0), both.factors().get(1), List.copyOf(rows), columns, cells);
  }

  private static Cell cell(FairRow row) {
    Summary raw = row.raw();
    Lasting lasting = row.lasting();
    return new Cell(
        row.levels().get(0),
        row.levels().get(1),
        row.pieces(),
        row.students(),
        raw == null ? null : Double.valueOf(raw.mean()),
        lasting == null ? null : lasting.median(),
        row.atLeast(),
        row.bounds(),
        row.held() == null ? null : Double.valueOf(100 * row.held().share()));
  }
}
