package walebook.statistics;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One-way analysis of variance: how much of the scatter lies between groups.
 *
 * <p>{@code SSb = Σ n_i (ȳ_i − ȳ)²}, {@code SSw = Σ (y − ȳ_i)²}, {@code F = (SSb/(p−1)) /
 * (SSw/(N−p))} (R. A. Fisher, Statistical Methods for Research Workers, 1925).
 *
 * @param groups name and summary of each group, in the order given
 * @param n all values
 * @param mean mean of all values
 * @param ssBetween sum of squares between groups
 * @param dfBetween p − 1
 * @param ssWithin sum of squares within groups
 * @param dfWithin N − p
 * @param residualSd {@code √(SSw/(N−p))}, null when no group has two values
 * @param f null with one group, without repeats, or when no group scatters at all
 * @param p chance of an F as large without differences, null as {@code f}
 * @param rSquared {@code SSb/(SSb+SSw)}, null when all values are the same
 */
public record OneWay(
    List<Group> groups,
    int n,
    double mean,
    double ssBetween,
    int dfBetween,
    double ssWithin,
    int dfWithin,
    @Nullable Double residualSd,
    @Nullable Double f,
    @Nullable Double p,
    @Nullable Double rSquared) {

  /**
   * A group of the analysis.
   *
   * @param name as given
   * @param summary of its values
   */
  public record Group(String name, Summary summary) {}

  public OneWay {
    groups = List.copyOf(groups);
  }

  /**
   * The analysis of samples of any sizes.
   *
   * @param samples at least one, with different names
   */
  public static OneWay of(List<Sample> samples) {
    if (samples.isEmpty()) {
      throw new IllegalArgumentException("samples must hold at least one sample");
    }
    Require.distinct("samples", samples, Sample::name);
    List<Double> all = new ArrayList<>();
    List<Group> groups = new ArrayList<>();
    for (Sample sample : samples) {
      all.addAll(sample.values());
      groups.add(new Group(sample.name(), sample.summary()));
    }
    double mean = Summary.of(all).mean();
    double between = 0;
    double within = 0;
    for (Group group : groups) {
      double away = group.summary.mean() - mean;
      between += group.summary.n() * away * away;
      within += group.summary.sumOfSquares();
    }
    int dfBetween = groups.size() - 1;
    int dfWithin = all.size() - groups.size();
    Double f =
        dfBetween > 0 && dfWithin > 0 && within > 0
            ? Double.valueOf((between / dfBetween) / (within / dfWithin))
            : null;
    return new OneWay(
        groups,
        all.size(),
        mean,
        between,
        dfBetween,
        within,
        dfWithin,
        dfWithin > 0 ? Double.valueOf(Math.sqrt(within / dfWithin)) : null,
        f,
        f == null ? null : Double.valueOf(Quantiles.fTail(f, dfBetween, dfWithin)),
        between + within > 0 ? Double.valueOf(between / (between + within)) : null);
  }
}
