package walebook.statistics;

import java.util.ArrayDeque;
import java.util.Arrays;

/**
 * Evens out how often treatments stand in blocks, as far as what is held and barred allows: as long
 * as a chain of exchanges leads from a treatment to one that stands in two blocks fewer, it is
 * carried out. Without such a chain the sum of squared replications is least (a flow of least
 * convex cost has no cheaper circuit; Ahuja, Magnanti and Orlin, Network Flows, chapter 14; from
 * memory).
 */
final class EvenOut {
  private final BlockState state;
  private final int[] from;
  private final int[] block;
  private final int[] at;

  private EvenOut(BlockState state) {
    this.state = state;
    this.from = new int[state.treatments];
    this.block = new int[state.treatments];
    this.at = new int[state.treatments];
  }

  static void in(BlockState state) {
    EvenOut even = new EvenOut(state);
    boolean changed = true;
    while (changed) {
      changed = false;
      for (int each = 0; each < state.treatments && !changed; each++) {
        changed = even.step(each);
      }
    }
  }

  /** Looks for the nearest treatment with two fewer and moves one along the chain to it. */
  private boolean step(int start) {
    Arrays.fill(from, -1);
    from[start] = start;
    ArrayDeque<Integer> queue = new ArrayDeque<>();
    queue.add(start);
    while (!queue.isEmpty()) {
      int treatment = queue.remove();
      if (state.times[treatment] <= state.times[start] - 2) {
        move(start, treatment);
        return true;
      }
      look(treatment, queue);
    }
    return false;
  }

  private void look(int treatment, ArrayDeque<Integer> queue) {
    for (int b = 0; b < state.blocks.length; b++) {
      int[] own = state.blocks[b];
      for (int i = state.held[b]; i < own.length; i++) {
        if (own[i] == treatment) {
          for (int next = 0; next < state.treatments; next++) {
            if (from[next] < 0 && state.mayTake(b, next)) {
              from[next] = treatment;
              block[next] = b;
              at[next] = i;
              queue.add(next);
            }
          }
        }
      }
    }
  }

  /** From the far end, so that no block ever holds a treatment twice. */
  private void move(int start, int end) {
    for (int each = end; each != start; each = from[each]) {
      state.replace(block[each], at[each], each);
    }
  }
}
