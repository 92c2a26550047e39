package walebook.statistics;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.jspecify.annotations.Nullable;

/**
 * Shares treatments out to blocks as fairly as a fixed amount of work finds: each treatment nearly
 * equally often, each two of them in one block nearly equally often, unlike ones together where
 * that is all the same. A balanced incomplete block design is found where a rule makes one or the
 * search meets one.
 */
public final class AllotBlocks {
  private static final int RUNS = 3;
  private static final int RENAMINGS = 200;

  /** Beyond this many treatments the exact measure costs more than it finds. */
  private static final int SHARP_TREATMENTS = 40;

  /** Keeps the matrix of a design in parts from being singular, and parts dear. */
  private static final double RIDGE = 1e-6;

  private final BlockTask task;
  private final Random random;
  private @Nullable BlockState best;
  private @Nullable BlockEfficiency reached;

  private AllotBlocks(BlockTask task, Random random) {
    this.task = task;
    this.random = random;
  }

  /** The blocks: what each holds first, then what it takes, in random order. */
  public static BlockDesign of(BlockTask task, Random random) {
    AllotBlocks allot = new AllotBlocks(task, random);
    allot.byRule();
    for (int run = 0; run < RUNS && !allot.isDone(); run++) {
      allot.bySearch();
    }
    allot.rename();
    return allot.shuffled();
  }

  /** Changes as few of the treatments not held as it takes to even out how often each stands. */
  public static BlockDesign evened(BlockTask task, BlockDesign before) {
    BlockState state = new BlockState(task);
    state.take(before.blocks());
    EvenOut.in(state);
    return state.design();
  }

  private void byRule() {
    if (!task.isPlain()) {
      return;
    }
    int size = task.shares().get(0).more();
    for (BlockDesign each : MadeDesigns.of(task.treatments(), task.shares().size(), size, random)) {
      BlockState made = new BlockState(task);
      made.take(relabelled(each).blocks());
      offer(made);
    }
  }

  /** Where any treatment may stand for any other, the best may come out less alike renamed. */
  private void rename() {
    if (task.isPlain() && best != null && best.alike > 0) {
      BlockState made = new BlockState(task);
      made.take(relabelled(best.design()).blocks());
      offer(made);
    }
  }

  private void bySearch() {
    BlockState state = new BlockState(task);
    state.fill(task, random);
    EvenOut.in(state);
    BlockSearch search = new BlockSearch(state, task, random);
    search.anneal();
    if (task.treatments() <= SHARP_TREATMENTS && !isBound(state.design().efficiency())) {
      search.sharpen(AllotBlocks::loss);
    }
    offer(state);
  }

  /** Σ 1 ÷ factor, with a large toll for every further part. */
  private static double loss(BlockState state) {
    int n = state.treatments;
    double[][] matrix = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        matrix[i][j] = i == j ? state.scaled(i, i) + RIDGE : -state.scaled(i, j);
      }
    }
    CholeskyDecomposition root =
        new CholeskyDecomposition(new Array2DRowRealMatrix(matrix, false), 1e-8, 1e-12);
    double trace = 0;
    double[][] inverse = root.getSolver().getInverse().getData();
    for (int i = 0; i < n; i++) {
      trace += inverse[i][i];
    }
    return trace - 1 / RIDGE;
  }

  private void offer(BlockState state) {
    BlockEfficiency found = state.design().efficiency();
    if (best == null || reached == null || compare(state, found, best, reached) < 0) {
      best = state;
      reached = found;
    }
  }

  private static int compare(
      BlockState one, BlockEfficiency ofOne, BlockState other, BlockEfficiency ofOther) {
    int parts = Integer.compare(ofOne.parts(), ofOther.parts());
    if (parts != 0) {
      return parts;
    }
    double gain = value(ofOther.average()) - value(ofOne.average());
    return Math.abs(gain) > 1e-9 ? Double.compare(gain, 0) : Double.compare(one.alike, other.alike);
  }

  private static double value(@Nullable Double average) {
    return average == null ? 0 : average;
  }

  private boolean isDone() {
    return reached != null && isBound(reached);
  }

  private static boolean isBound(BlockEfficiency found) {
    Double share = found.share();
    return share != null && found.connected() && share > 1 - 1e-9;
  }

  /** The same design, its blocks and treatments drawn anew, then renamed to be less alike. */
  private BlockDesign relabelled(BlockDesign design) {
    int[] label = BlockState.shuffled(design.treatments(), random);
    List<List<Integer>> shuffled = new ArrayList<>(design.blocks());
    Collections.shuffle(shuffled, random);
    BlockDesign now = renamed(design.treatments(), shuffled, label);
    long alike = alike(now);
    for (int i = 0; i < RENAMINGS && alike > 0; i++) {
      int one = random.nextInt(label.length);
      int other = random.nextInt(label.length);
      swap(label, one, other);
      BlockDesign then = renamed(design.treatments(), shuffled, label);
      long less = alike(then);
      if (less <= alike) {
        now = then;
        alike = less;
      } else {
        swap(label, one, other);
      }
    }
    return now;
  }

  private static BlockDesign renamed(int treatments, List<List<Integer>> blocks, int[] label) {
    return new BlockDesign(
        treatments,
        blocks.stream().map(block -> block.stream().map(each -> label[each]).toList()).toList());
  }

  private static void swap(int[] label, int one, int other) {
    int kept = label[one];
    label[one] = label[other];
    label[other] = kept;
  }

  private long alike(BlockDesign design) {
    long alike = 0;
    for (List<Integer> block : design.blocks()) {
      for (int one : block) {
        for (int other : block) {
          alike += one < other ? task.likeness().applyAsInt(one, other) : 0;
        }
      }
    }
    return alike;
  }

  private BlockDesign shuffled() {
    List<List<Integer>> blocks = new ArrayList<>();
    if (best != null) {
      List<List<Integer>> found = best.design().blocks();
      for (int b = 0; b < found.size(); b++) {
        List<Integer> taken = new ArrayList<>(found.get(b));
        Collections.shuffle(taken.subList(best.held[b], taken.size()), random);
        blocks.add(taken);
      }
    }
    return new BlockDesign(task.treatments(), blocks);
  }
}
