package walebook.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

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
    int factors = cells.get(0).levels().size();
    Counted all = new Counted();
    cells.forEach(cell -> all.addAll(cell.values()));
    double[] fitted = new double[cells.size()];
    Arrays.fill(fitted, all.median());
    double moved = Double.POSITIVE_INFINITY;
    for (int round = 0; round < MOST_ROUNDS && moved > STILL; round++) {
      moved = 0;
      for (int factor = 0; factor < factors; factor++) {
        moved = Math.max(moved, polish(cells, factor, fitted));
      }
    }
    int taken = 1;
    for (int factor = 0; factor < factors; factor++) {
      Set<String> levels = new HashSet<>();
      for (Cell cell : cells) {
        levels.add(cell.levels().get(factor));
      }
      taken += levels.size() - 1;
    }
    int spare = all.n() - taken;
    return new MedianPolish(
        Arrays.stream(fitted).boxed().toList(), spread(cells, fitted, taken), spare);
  }

  /** Takes the median of what is left at each level into the fit; how far the fit moved. */
  private static double polish(List<Cell> cells, int factor, double[] fitted) {
    Map<String, Counted> left = new HashMap<>();
    for (int i = 0; i < fitted.length; i++) {
      double middle = fitted[i];
      left.computeIfAbsent(cells.get(i).levels().get(factor), level -> new Counted())
          .addAll(cells.get(i).values().map(value -> value - middle));
    }
    Map<String, Double> medians = new HashMap<>();
    left.forEach((level, values) -> medians.put(level, values.median()));
    double moved = 0;
    for (int i = 0; i < fitted.length; i++) {
      double by = medians.getOrDefault(cells.get(i).levels().get(factor), 0.0);
      fitted[i] += by;
      moved = Math.max(moved, Math.abs(by));
    }
    return moved;
  }

  /**
   * From the median of the absolute residuals, without as many of the least as were fitted: a fit
   * by medians goes right through so many values (R. W. Hill and P. W. Holland, Journal of the
   * American Statistical Association 72 (1977) 828–833).
   */
  private static double spread(List<Cell> cells, double[] fitted, int taken) {
    List<Double> away = new ArrayList<>();
    for (int i = 0; i < fitted.length; i++) {
      double middle = fitted[i];
      cells
          .get(i)
          .values()
          .rising()
          .forEach(
              (value, times) -> {
                for (int t = 0; t < times[0]; t++) {
                  away.add(Math.abs(value - middle));
                }
              });
    }
    List<Double> most = away.stream().sorted().skip(taken).toList();
    return most.isEmpty() ? 0 : Robust.MAD_TO_SD * median(most);
  }

  private static double median(List<Double> rising) {
    int n = rising.size();
    return (rising.get((n - 1) / 2) + rising.get(n / 2)) / 2;
  }
}
