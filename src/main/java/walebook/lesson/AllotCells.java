package walebook.lesson;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.function.IntBinaryOperator;

/**
 * Shares a plan's combinations out to a class. Each student in turn takes the combination sewn
 * least often so far, and among those the one that is least like what the student has already, so
 * that everyone can compare in their own hands; then the one seen least often together with it;
 * ties fall by the seed. Taking the least sewn keeps any two combinations within one of each other
 * in how often they are sewn. (A greedy balanced allocation in the manner of incomplete block
 * designs, with students as blocks; Cochran and Cox, Experimental Designs, chapters 9 and 11.)
 */
final class AllotCells {
  private final Random random;
  private final int cells;
  private final int[] sewn;
  private final int[][] together;
  private final IntBinaryOperator likeness;

  private AllotCells(int cells, IntBinaryOperator likeness, Random random) {
    this.likeness = likeness;
    this.random = random;
    this.cells = cells;
    this.sewn = new int[cells];
    this.together = new int[cells][cells];
  }

  /**
   * Which cells each student takes, in the order to sew them.
   *
   * @param shares how many cells each student takes; more than there are is cut to all of them
   * @param cells how many there are
   * @param likeness how much two cells have in common, such as their equal levels
   * @return one list of cell numbers, from 0, for each share
   */
  static List<List<Integer>> allot(
      List<Integer> shares, int cells, IntBinaryOperator likeness, Random random) {
    AllotCells allot = new AllotCells(cells, likeness, random);
    List<Integer> turns = new ArrayList<>();
    List<List<Integer>> taken = new ArrayList<>();
    for (int i = 0; i < shares.size(); i++) {
      turns.add(i);
      taken.add(List.of());
    }
    // Else the first on the roster would always get what is sewn once more.
    Collections.shuffle(turns, random);
    for (int turn : turns) {
      taken.set(turn, allot.take(Math.min(shares.get(turn), cells)));
    }
    return List.copyOf(taken);
  }

  private List<Integer> take(int share) {
    List<Integer> block = new ArrayList<>();
    while (block.size() < share) {
      int next = next(block);
      for (int other : block) {
        together[next][other]++;
        together[other][next]++;
      }
      sewn[next]++;
      block.add(next);
    }
    Collections.shuffle(block, random);
    return List.copyOf(block);
  }

  private int next(List<Integer> block) {
    List<Integer> free = new ArrayList<>();
    for (int cell = 0; cell < cells; cell++) {
      if (!block.contains(cell)) {
        free.add(cell);
      }
    }
    Collections.shuffle(free, random);
    return Collections.min(
        free,
        Comparator.comparingInt((Integer cell) -> sewn[cell])
            .thenComparingInt(cell -> likenessTo(cell, block))
            .thenComparingInt(cell -> seenWith(cell, block)));
  }

  private int likenessTo(int cell, List<Integer> block) {
    return block.stream().mapToInt(other -> likeness.applyAsInt(cell, other)).sum();
  }

  private int seenWith(int cell, List<Integer> block) {
    return block.stream().mapToInt(other -> together[cell][other]).sum();
  }
}
