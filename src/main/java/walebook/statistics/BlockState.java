package walebook.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Random;

/**
 * Blocks being filled and changed, with the sum of squares of the information matrix kept up to
 * date: of designs with one trace, the one with the least sum of squares has the most even
 * canonical factors (the (M, S) criterion; Shah, Ann. Math. Statist. 31 (1960), Eccleston and
 * Hedayat, Ann. Statist. 2 (1974); from memory).
 */
final class BlockState {
  final int treatments;

  /** The treatments of each block; those held stand first. */
  final int[][] blocks;

  /** How many each block holds already. */
  final int[] held;

  final int[] times;
  final BitSet[] open;
  private final boolean[][] has;
  private final double[][] weight;
  private final double[][] likeness;

  /** Σ c² over all pairs i, j of C's entries. */
  double squares;

  /** Likeness summed over the pairs within blocks. */
  double alike;

  BlockState(BlockTask task) {
    this.treatments = task.treatments();
    int count = task.shares().size();
    this.blocks = new int[count][];
    this.held = new int[count];
    this.open = new BitSet[count];
    this.has = new boolean[count][treatments];
    this.times = new int[treatments];
    this.weight = new double[treatments][treatments];
    this.likeness = new double[treatments][treatments];
    for (int i = 0; i < treatments; i++) {
      for (int j = 0; j < treatments; j++) {
        likeness[i][j] = i == j ? 0 : task.likeness().applyAsInt(i, j);
      }
    }
    for (int b = 0; b < count; b++) {
      BlockTask.Share share = task.shares().get(b);
      open[b] = task.open(b);
      held[b] = share.held().size();
      blocks[b] = new int[held[b] + Math.min(share.more(), open[b].cardinality())];
    }
  }

  /** Fills every block: what it holds, then what the least have taken so far; ties by chance. */
  void fill(BlockTask task, Random random) {
    for (int b = 0; b < blocks.length; b++) {
      for (int i = 0; i < held[b]; i++) {
        put(b, i, task.shares().get(b).held().get(i));
      }
    }
    int[] turns = shuffled(blocks.length, random);
    for (int b : turns) {
      for (int i = held[b]; i < blocks[b].length; i++) {
        put(b, i, least(b, random));
      }
    }
    measure();
  }

  /** Takes over blocks made elsewhere, of the same sizes and holding the same first. */
  void take(List<List<Integer>> made) {
    for (int b = 0; b < blocks.length; b++) {
      for (int i = 0; i < blocks[b].length; i++) {
        put(b, i, made.get(b).get(i));
      }
    }
    measure();
  }

  private int least(int block, Random random) {
    int best = -1;
    int ties = 0;
    for (int i = open[block].nextSetBit(0); i >= 0; i = open[block].nextSetBit(i + 1)) {
      if (has[block][i] || (best >= 0 && times[i] > times[best])) {
        continue;
      }
      boolean fewer = best < 0 || times[i] < times[best];
      ties = fewer ? 1 : ties + 1;
      if (fewer || random.nextInt(ties) == 0) {
        best = i;
      }
    }
    return best;
  }

  private void put(int block, int at, int treatment) {
    blocks[block][at] = treatment;
    has[block][treatment] = true;
    times[treatment]++;
  }

  private void measure() {
    for (double[] row : weight) {
      Arrays.fill(row, 0);
    }
    alike = 0;
    for (int[] block : blocks) {
      for (int i = 0; i < block.length; i++) {
        weight[block[i]][block[i]] += 1 - 1.0 / block.length;
        for (int j = 0; j < i; j++) {
          weight[block[i]][block[j]] += 1.0 / block.length;
          weight[block[j]][block[i]] += 1.0 / block.length;
          alike += likeness[block[i]][block[j]];
        }
      }
    }
    squares = 0;
    for (double[] row : weight) {
      for (double each : row) {
        squares += each * each;
      }
    }
  }

  /**
   * Minus an entry of the information matrix beside its diagonal, or the entry itself on it, scaled
   * by the replications; nought for a treatment in no block.
   */
  double scaled(int i, int j) {
    return times[i] == 0 || times[j] == 0
        ? 0
        : weight[i][j] / Math.sqrt((double) times[i] * times[j]);
  }

  /** True when the block could take the treatment in the place of another. */
  boolean mayTake(int block, int treatment) {
    return !has[block][treatment] && open[block].get(treatment);
  }

  /** Puts another treatment into a block's place and keeps all sums. */
  void replace(int block, int at, int with) {
    int old = blocks[block][at];
    double step = 1.0 / blocks[block].length;
    add(old, old, step - 1);
    add(with, with, 1 - step);
    for (int i = 0; i < blocks[block].length; i++) {
      if (i != at) {
        int other = blocks[block][i];
        add(old, other, -step);
        add(with, other, step);
        alike += likeness[with][other] - likeness[old][other];
      }
    }
    has[block][old] = false;
    has[block][with] = true;
    times[old]--;
    times[with]++;
    blocks[block][at] = with;
  }

  private void add(int i, int j, double step) {
    double before = weight[i][j];
    double after = before + step;
    double both = after * after - before * before;
    weight[i][j] = after;
    weight[j][i] = after;
    squares += i == j ? both : 2 * both;
  }

  BlockDesign design() {
    List<List<Integer>> all = new ArrayList<>();
    for (int[] block : blocks) {
      all.add(Arrays.stream(block).boxed().toList());
    }
    return new BlockDesign(treatments, all);
  }

  static int[] shuffled(int count, Random random) {
    int[] order = new int[count];
    for (int i = 0; i < count; i++) {
      int j = random.nextInt(i + 1);
      order[i] = order[j];
      order[j] = i;
    }
    return order;
  }
}
