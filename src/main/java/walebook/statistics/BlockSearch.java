package walebook.statistics;

import java.util.Arrays;
import java.util.Random;
import java.util.function.ToDoubleFunction;

/**
 * Improves blocks by exchanging treatments between them, or by moving a treatment's extra turn to
 * another, without making replications less even. First by simulated annealing on the sum of
 * squares, then by plain ascent on the average efficiency itself.
 */
final class BlockSearch {
  /** Exchanges tried in one run; the work is counted, so that a seed gives one plan anywhere. */
  static final int STEPS = 40_000;

  /** Exchanges tried on the efficiency itself, for few treatments. */
  static final int SHARP_STEPS = 1_500;

  private static final double TIE = 0.02;

  private final BlockState state;
  private final Random random;
  private final int[] movable;
  private final double size;
  private final double likest;
  private int firstBlock;
  private int firstAt;
  private int firstWas;
  private int secondBlock;
  private int secondAt;
  private int secondWas;

  BlockSearch(BlockState state, BlockTask task, Random random) {
    this.state = state;
    this.random = random;
    int count = 0;
    int plots = 0;
    int[] all = new int[state.blocks.length];
    for (int b = 0; b < all.length; b++) {
      plots += state.blocks[b].length;
      if (state.blocks[b].length > state.held[b]) {
        all[count++] = b;
      }
    }
    this.movable = Arrays.copyOf(all, count);
    this.size = Math.max(1, (double) plots / Math.max(1, all.length));
    double most = 1;
    for (int i = 0; i < task.treatments(); i++) {
      for (int j = 0; j < i; j++) {
        most = Math.max(most, task.likeness().applyAsInt(i, j));
      }
    }
    this.likest = most;
  }

  /** Cools from a step of the concurrences that is often taken to one that hardly ever is. */
  void anneal() {
    if (movable.length == 0) {
      return;
    }
    double unit = 4 / (size * size);
    double heat = unit;
    double cooling = Math.pow(0.02, 1.0 / STEPS);
    double now = rough(state);
    for (int step = 0; step < STEPS; step++) {
      heat *= cooling;
      if (!exchange()) {
        continue;
      }
      double then = rough(state);
      if (then <= now || random.nextDouble() < Math.exp((now - then) / heat)) {
        now = then;
      } else {
        undo();
      }
    }
  }

  private double rough(BlockState of) {
    return of.squares + TIE / (size * size) * of.alike / likest;
  }

  /** Keeps every exchange that makes the measure smaller, or as small and less alike. */
  void sharpen(ToDoubleFunction<BlockState> measure) {
    if (movable.length == 0) {
      return;
    }
    double now = measure.applyAsDouble(state);
    double alike = state.alike;
    for (int step = 0; step < SHARP_STEPS; step++) {
      double before = state.squares;
      if (!exchange()) {
        continue;
      }
      // Far worse in the rough is never better in the fine; leaving it out saves most of the work.
      boolean hopeless = state.squares > before + 8 / (size * size);
      double then = hopeless ? Double.POSITIVE_INFINITY : measure.applyAsDouble(state);
      boolean better = then < now - 1e-9;
      if (better || (then < now + 1e-9 && state.alike < alike)) {
        now = then;
        alike = state.alike;
      } else {
        undo();
      }
    }
  }

  /** One random exchange; false when the one drawn can't be made. */
  private boolean exchange() {
    firstBlock = movable[random.nextInt(movable.length)];
    firstAt = place(firstBlock);
    firstWas = state.blocks[firstBlock][firstAt];
    if (movable.length == 1 || random.nextInt(8) == 0) {
      secondBlock = -1;
      int with = random.nextInt(state.treatments);
      boolean good =
          state.mayTake(firstBlock, with) && state.times[with] + 1 == state.times[firstWas];
      if (good) {
        state.replace(firstBlock, firstAt, with);
      }
      return good;
    }
    secondBlock = movable[random.nextInt(movable.length)];
    secondAt = place(secondBlock);
    secondWas = state.blocks[secondBlock][secondAt];
    if (secondBlock == firstBlock
        || !state.mayTake(firstBlock, secondWas)
        || !state.mayTake(secondBlock, firstWas)) {
      return false;
    }
    state.replace(firstBlock, firstAt, secondWas);
    state.replace(secondBlock, secondAt, firstWas);
    return true;
  }

  private void undo() {
    state.replace(firstBlock, firstAt, firstWas);
    if (secondBlock >= 0) {
      state.replace(secondBlock, secondAt, secondWas);
    }
  }

  private int place(int block) {
    int free = state.blocks[block].length - state.held[block];
    return state.held[block] + random.nextInt(free);
  }
}
