package walebook.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The additive model {@code value = middle + effect of each factor's level + residual}, fitted by
 * medians, so that a few odd values bend it but little (J. W. Tukey, Exploratory Data Analysis,
 * 1977, chapter 11, for two factors; here for any number, with any number of values in a cell).
 *
 * @param fitted what the model makes of each cell, in their order
 * @param spread robust standard deviation of the residuals; 0 when it can't be told
 * @param spare values less what was fitted: how many speak for the spread
 */
public record MedianPolish(List<Double> fitted, double spread, int spare) {
  private static final int MOST_ROUNDS = 20;
  private static final double STILL = 1e-9;

  /**
   * Values that agree in every factor.
   *
   * @param levels one for each factor, in the same order in every cell
   * @param values at least one
   */
  public record Cell(List<String> levels, Counted values) {
    public Cell {
      levels = List.copyOf(levels);
      Require.some("values", values);
    }
  }

  public MedianPolish {
    fitted = List.copyOf(fitted);
  }

  /**
   * The fit.
   *
   * @param cells at least one, all told apart by the same factors
   */
  public static MedianPolish of(List<Cell> cells) {
    Table table = Table.of(cells);
    double[] fitted = new double[cells.size()];
    Arrays.fill(fitted, median(table.values.clone()));
    double moved = Double.POSITIVE_INFINITY;
    for (int round = 0; round < MOST_ROUNDS && moved > STILL; round++) {
      moved = 0;
      for (Level[] factor : table.factors) {
        moved = Math.max(moved, table.polish(factor, fitted));
      }
    }
    int taken = 1;
    for (Level[] factor : table.factors) {
      taken += factor.length - 1;
    }
    int spare = table.values.length - taken;
    return new MedianPolish(
        Arrays.stream(fitted).boxed().toList(), table.spread(fitted, taken), spare);
  }

  /** One level of a factor: the cells that have it, and their values by number. */
  private static final class Level {
    private final int[] cells;
    private final int[] values;

    Level(int[] cells, int[] values) {
      this.cells = cells;
      this.values = values;
    }
  }

  /** All values in a row, each with the cell it is of; the rounds go through them many times. */
  private static final class Table {
    private final double[] values;
    private final int[] cellOf;
    private final List<Level[]> factors;

    private Table(double[] values, int[] cellOf, List<Level[]> factors) {
      this.values = values;
      this.cellOf = cellOf;
      this.factors = factors;
    }

    static Table of(List<Cell> cells) {
      int n = cells.stream().mapToInt(cell -> cell.values().n()).sum();
      double[] values = new double[n];
      int[] cellOf = new int[n];
      int[] next = {0};
      for (int i = 0; i < cells.size(); i++) {
        int cell = i;
        cells
            .get(i)
            .values()
            .rising(
                (value, times) -> {
                  Arrays.fill(values, next[0], next[0] + times, value);
                  Arrays.fill(cellOf, next[0], next[0] + times, cell);
                  next[0] += times;
                });
      }
      List<Level[]> factors = new ArrayList<>();
      for (int factor = 0; factor < cells.get(0).levels().size(); factor++) {
        factors.add(levels(cells, factor, cellOf));
      }
      return new Table(values, cellOf, factors);
    }

    private static Level[] levels(List<Cell> cells, int factor, int[] cellOf) {
      Map<String, List<Integer>> byLevel = new LinkedHashMap<>();
      for (int i = 0; i < cells.size(); i++) {
        byLevel.computeIfAbsent(cells.get(i).levels().get(factor), key -> new ArrayList<>()).add(i);
      }
      return byLevel.values().stream()
          .map(
              some -> {
                BitSet has = new BitSet(cells.size());
                some.forEach(has::set);
                int[] values =
                    IntStream.range(0, cellOf.length).filter(i -> has.get(cellOf[i])).toArray();
                return new Level(has.stream().toArray(), values);
              })
          .toArray(Level[]::new);
    }

    /** Takes the median of what is left at each level into the fit; how far the fit moved. */
    double polish(Level[] factor, double[] fitted) {
      double moved = 0;
      for (Level level : factor) {
        double[] left = new double[level.values.length];
        for (int i = 0; i < left.length; i++) {
          left[i] = values[level.values[i]] - fitted[cellOf[level.values[i]]];
        }
        double by = median(left);
        for (int cell : level.cells) {
          fitted[cell] += by;
        }
        moved = Math.max(moved, Math.abs(by));
      }
      return moved;
    }

    /**
     * From the median of the absolute residuals, without as many of the least as were fitted: a fit
     * by medians goes right through so many values (R. W. Hill and P. W. Holland, Journal of the
     * American Statistical Association 72 (1977) 828–833).
     */
    double spread(double[] fitted, int taken) {
      double[] away = new double[values.length];
      for (int i = 0; i < away.length; i++) {
        away[i] = Math.abs(values[i] - fitted[cellOf[i]]);
      }
      Arrays.sort(away);
      return taken >= away.length
          ? 0
          : Robust.MAD_TO_SD * median(Arrays.copyOfRange(away, taken, away.length));
    }
  }

  /** Puts them in order. */
  private static double median(double[] values) {
    Arrays.sort(values);
    int n = values.length;
    return (values[(n - 1) / 2] + values[n / 2]) / 2;
  }
}
