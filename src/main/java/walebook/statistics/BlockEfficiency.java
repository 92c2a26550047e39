package walebook.statistics;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.jspecify.annotations.Nullable;

/**
 * How much a block design tells about differences between its treatments, against blocks that hold
 * every treatment.
 *
 * <p>The canonical efficiency factors are the eigenvalues, other than the trivial nought, of the
 * intrablock information matrix C = R − N K⁻¹ N′ scaled by the replications, R^−½ C R^−½; the
 * average efficiency factor is their harmonic mean (John and Williams, Cyclic and Computer
 * Generated Designs, 2nd edition, chapter 2; from memory). Their sum is known from replications and
 * block sizes alone, so the harmonic mean is at most their mean: v (k − 1) ÷ (k (v − 1)) for equal
 * blocks of k and v treatments. With fewer blocks than treatments, v − b of the factors are 1,
 * which lowers the bound for the rest (Patterson and Williams, J. R. Statist. Soc. B 38 (1976);
 * from memory).
 *
 * @param treated treatments that stand in any block
 * @param parts groups of treatments that no chain of shared blocks joins; 1 when all can be
 *     compared
 * @param average the average efficiency factor over the comparisons that can be made, 0 to 1; null
 *     when there are none
 * @param bound what no design of these sizes can pass; null when it could not be joined up at all
 */
public record BlockEfficiency(
    int treated, int parts, @Nullable Double average, @Nullable Double bound) {
  private static final double NOUGHT = 1e-9;

  /** True when any two treatments can be compared within blocks. */
  public boolean connected() {
    return parts == 1 && treated > 1;
  }

  /** The average against the bound, 0 to 1; null when there is no comparison or no bound. */
  public @Nullable Double share() {
    return average == null || bound == null ? null : Math.min(1, average / bound);
  }

  static BlockEfficiency of(BlockDesign design) {
    int[] times = design.replications();
    int[] place = new int[times.length];
    int treated = 0;
    for (int i = 0; i < times.length; i++) {
      place[i] = times[i] > 0 ? treated++ : -1;
    }
    if (treated < 2) {
      return new BlockEfficiency(treated, treated, null, null);
    }
    double[][] scaled = scaled(design.blocks(), times, place, treated);
    double sum = 0;
    for (int i = 0; i < treated; i++) {
      sum += scaled[i][i];
    }
    double[] factors =
        new EigenDecompositionSymmetric(new Array2DRowRealMatrix(scaled, false)).getEigenvalues();
    int noughts = (int) Arrays.stream(factors).filter(each -> each < NOUGHT).count();
    double reciprocals =
        Arrays.stream(factors).filter(each -> each >= NOUGHT).map(each -> 1 / each).sum();
    Double average = noughts == treated ? null : (treated - noughts) / reciprocals;
    int used = (int) design.blocks().stream().filter(block -> !block.isEmpty()).count();
    return new BlockEfficiency(treated, noughts, average, bound(treated, used, sum));
  }

  /**
   * The bound.
   *
   * @param sum of the canonical efficiency factors
   */
  private static @Nullable Double bound(int treatments, int blocks, double sum) {
    if (blocks >= treatments) {
      return sum < NOUGHT ? null : sum / (treatments - 1);
    }
    double whole = treatments - blocks;
    double rest = sum - whole;
    if (blocks == 1) {
      return 1.0;
    }
    return rest < NOUGHT ? null : (treatments - 1) / (whole + (blocks - 1) * (blocks - 1) / rest);
  }

  /** R^−½ C R^−½ over the treatments that stand in any block. */
  private static double[][] scaled(
      List<List<Integer>> blocks, int[] times, int[] place, int treated) {
    double[][] scaled = new double[treated][treated];
    for (int i = 0; i < treated; i++) {
      scaled[i][i] = 1;
    }
    for (List<Integer> block : blocks) {
      for (int one : block) {
        for (int other : block) {
          scaled[place[one]][place[other]] -=
              1 / (block.size() * Math.sqrt((double) times[one] * times[other]));
        }
      }
    }
    return scaled;
  }
}
