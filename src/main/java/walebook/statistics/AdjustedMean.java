package walebook.statistics;

import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * What a level would give if every block of its group had it once: the raw mean freed from who
 * happened to make it.
 *
 * <p>{@code τ_i + mean over blocks of β_j}, blocks weighing alike: the population marginal mean of
 * Searle, Speed and Milliken, The American Statistician 34 (1980) 216–221.
 *
 * @param level as given
 * @param group number of its group, from 0; means of different groups can't be compared
 * @param raw summary of the level's own values, nothing adjusted
 * @param blocks number of blocks that have this level
 * @param mean the adjusted mean
 * @param error standard error, the blocks taken as they are; null without degrees of freedom or
 *     without scatter
 * @param interval t-interval, null as {@code error}
 */
public record AdjustedMean(
    String level,
    int group,
    Summary raw,
    int blocks,
    double mean,
    @Nullable Double error,
    @Nullable Interval interval) {

  static List<AdjustedMean> all(
      Layout layout, WithinBlocks fit, Scatter scatter, List<Summary> raw) {
    List<Weights> weights =
        IntStream.range(0, layout.groups).mapToObj(g -> Weights.of(layout, fit, g)).toList();
    return IntStream.range(0, layout.levels.size())
        .mapToObj(i -> of(i, layout, scatter, raw.get(i), weights.get(layout.groupOfLevel[i]), fit))
        .toList();
  }

  private static AdjustedMean of(
      int i, Layout layout, Scatter scatter, Summary raw, Weights weights, WithinBlocks fit) {
    double mean = weights.base + fit.effect[i];
    double variance = weights.variance;
    for (int j = 0; j < weights.share.length; j++) {
      mean -= weights.share[j] * fit.effect[j];
      double aj = (i == j ? 1 : 0) - weights.share[j];
      for (int k = 0; k < weights.share.length; k++) {
        double ak = (i == k ? 1 : 0) - weights.share[k];
        variance += aj * ak * fit.covariance[j][k];
      }
    }
    Double sd = scatter.known();
    Cells cells = layout.cells;
    int blocks =
        (int) IntStream.range(0, cells.size()).filter(cell -> cells.level(cell) == i).count();
    return new AdjustedMean(
        layout.levels.get(i),
        layout.groupOfLevel[i],
        raw,
        blocks,
        mean,
        sd == null ? null : Double.valueOf(sd * Math.sqrt(variance)),
        scatter.interval(mean, variance));
  }

  /** A group's mean of block means, its variance, and each level's mean share in the blocks. */
  @SuppressWarnings("ArrayRecordComponent")
  private record Weights(double base, double variance, double[] share) {

    static Weights of(Layout layout, WithinBlocks fit, int group) {
      int[] own =
          IntStream.range(0, layout.blocks.size())
              .filter(j -> layout.groupOfBlock[j] == group)
              .toArray();
      double count = own.length;
      double base = IntStream.of(own).mapToDouble(j -> fit.blockMean[j]).sum() / count;
      double variance =
          IntStream.of(own).mapToDouble(j -> 1.0 / fit.blockSize[j]).sum() / count / count;
      double[] share = new double[layout.levels.size()];
      Cells cells = layout.cells;
      for (int i = 0; i < cells.size(); i++) {
        int block = cells.block(i);
        if (layout.groupOfBlock[block] == group) {
          share[cells.level(i)] += cells.n(i) / (count * fit.blockSize[block]);
        }
      }
      return new Weights(base, variance, share);
    }
  }
}
