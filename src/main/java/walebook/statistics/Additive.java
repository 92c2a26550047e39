package walebook.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The additive two-way model {@code value = block + level + error} on any layout, balanced or not,
 * by least squares: compares settings fairly when not everybody made everything.
 *
 * <p>Only what the layout lets be told is told: levels fall into groups that hang together through
 * shared blocks; differences across groups are listed as not estimable (S. R. Searle, Linear Models
 * for Unbalanced Data, 1987, chapters 4 and 5). The model takes it that a level does the same in
 * every block.
 *
 * @param n number of values
 * @param blocks in order of first appearance
 * @param groups levels that can be compared with each other; one group when all can
 * @param ssLevels sum of squares of levels after blocks
 * @param dfLevels levels less groups
 * @param ssError residual sum of squares
 * @param dfError {@code n − blocks − levels + groups}
 * @param residualSd null without degrees of freedom, 0 without scatter
 * @param f of the levels after blocks; null with nothing to compare or without known scatter
 * @param p chance of an F as large if all levels were alike; null as {@code f}
 * @param additivity the check of the model itself; null when no piece was repeated, no cell is left
 *     over, or repeats don't scatter
 * @param means one for each level, in order of first appearance
 * @param differences of every pair that can be compared, p-values adjusted together
 * @param notEstimable pairs that nothing in the layout compares
 */
public record Additive(
    int n,
    List<String> blocks,
    List<List<String>> groups,
    double ssLevels,
    int dfLevels,
    double ssError,
    int dfError,
    @Nullable Double residualSd,
    @Nullable Double f,
    @Nullable Double p,
    @Nullable Additivity additivity,
    List<AdjustedMean> means,
    List<Difference> differences,
    List<Pair> notEstimable) {

  /** Two levels whose difference nothing tells. */
  public record Pair(String first, String second) {}

  public Additive {
    blocks = List.copyOf(blocks);
    groups = List.copyOf(groups);
    means = List.copyOf(means);
    differences = List.copyOf(differences);
    notEstimable = List.copyOf(notEstimable);
  }

  /**
   * The fit.
   *
   * @param responses at least one
   * @param confidence of all intervals
   */
  public static Additive of(List<Response> responses, double confidence) {
    return of(responses, confidence, confidence);
  }

  /**
   * The fit, with a confidence of its own for differences: where many are looked at, {@code 1 − (1
   * − c)/m} keeps all m of them at once at c (Bonferroni).
   *
   * @param responses at least one
   * @param confidence of the means' intervals
   * @param each of every difference's interval
   */
  public static Additive of(List<Response> responses, double confidence, double each) {
    Layout layout = new Layout(responses);
    return of(layout, layout.raw(responses), confidence, each);
  }

  /**
   * The same of values that were summed up: a fit by least squares needs no more of them.
   *
   * @param shares at least one value
   * @param blocks their names by number; those without a value are left out
   * @param levels their names by number; each has a value
   */
  public static Additive ofShares(
      Shares shares, List<String> blocks, List<String> levels, double confidence, double each) {
    Layout layout = Layout.ofShares(shares, blocks, levels);
    return of(layout, layout.rawOfShares(shares), confidence, each);
  }

  private static Additive of(Layout layout, List<Summary> raw, double confidence, double each) {
    WithinBlocks fit = new WithinBlocks(layout);
    Scatter scatter = Scatter.of(fit, layout, confidence);
    Double sd = scatter.known();
    Double f =
        sd == null || fit.dfLevels == 0
            ? null
            : Double.valueOf(fit.ssLevels / fit.dfLevels / (sd * sd));
    List<Difference> differences = new ArrayList<>();
    List<Pair> not = new ArrayList<>();
    compare(layout, fit, Scatter.of(fit, layout, each), differences, not);
    return new Additive(
        raw.stream().mapToInt(Summary::n).sum(),
        layout.blocks,
        IntStream.range(0, layout.groups).mapToObj(g -> names(layout, g)).toList(),
        fit.ssLevels,
        fit.dfLevels,
        fit.ssError,
        fit.dfError,
        scatter.sd(),
        f,
        f == null ? null : Double.valueOf(Quantiles.fTail(f, fit.dfLevels, fit.dfError)),
        Additivity.of(layout, fit),
        AdjustedMean.all(layout, fit, scatter, raw),
        Difference.adjusted(differences),
        not);
  }

  private static List<String> names(Layout layout, int group) {
    return Arrays.stream(layout.levelsOf(group)).mapToObj(layout.levels::get).toList();
  }

  private static void compare(
      Layout layout,
      WithinBlocks fit,
      Scatter scatter,
      List<Difference> differences,
      List<Pair> not) {
    for (int i = 0; i < layout.levels.size(); i++) {
      for (int j = i + 1; j < layout.levels.size(); j++) {
        String first = layout.levels.get(i);
        String second = layout.levels.get(j);
        if (layout.groupOfLevel[i] != layout.groupOfLevel[j]) {
          not.add(new Pair(first, second));
          continue;
        }
        double variance = fit.covariance[i][i] + fit.covariance[j][j] - 2 * fit.covariance[i][j];
        double estimate = fit.effect[i] - fit.effect[j];
        differences.add(Difference.of(first, second, estimate, scatter, variance));
      }
    }
  }

  /** The adjusted mean of a level, null when there is no such level. */
  public @Nullable AdjustedMean mean(String level) {
    return means.stream().filter(m -> m.level().equals(level)).findFirst().orElse(null);
  }

  /**
   * The difference {@code first − second}, adjusted with all others.
   *
   * @return null when it is not estimable or there is no such pair
   */
  public @Nullable Difference difference(String first, String second) {
    for (Difference one : differences) {
      if (one.first().equals(first) && one.second().equals(second)) {
        return one;
      }
      if (one.first().equals(second) && one.second().equals(first)) {
        return one.turned();
      }
    }
    return null;
  }

  /** Every estimable {@code other − control}, adjusted for being looked at as these alone. */
  public List<Difference> differencesFrom(String control) {
    List<Difference> against = new ArrayList<>();
    for (Difference one : differences) {
      if (one.second().equals(control)) {
        against.add(one);
      } else if (one.first().equals(control)) {
        against.add(one.turned());
      }
    }
    return Difference.adjusted(against);
  }
}
