package walebook.statistics;

import java.util.BitSet;
import java.util.List;

/**
 * Which treatments stand in which blocks. In a class the blocks are students and the treatments
 * combinations of settings.
 *
 * @param treatments how many there are, numbered from 0
 * @param blocks the treatments of each block, none twice
 */
public record BlockDesign(int treatments, List<List<Integer>> blocks) {
  public BlockDesign {
    blocks = blocks.stream().map(List::copyOf).toList();
    if (treatments < 1) {
      throw new IllegalArgumentException("treatments must be at least 1: " + treatments);
    }
    for (List<Integer> block : blocks) {
      BitSet seen = new BitSet(treatments);
      for (int each : block) {
        if (each < 0 || each >= treatments || seen.get(each)) {
          throw new IllegalArgumentException("blocks hold a treatment twice or none: " + block);
        }
        seen.set(each);
      }
    }
  }

  /** How many plots there are in all blocks together. */
  public int plots() {
    return blocks.stream().mapToInt(List::size).sum();
  }

  /** How often each treatment stands in a block. */
  public int[] replications() {
    int[] times = new int[treatments];
    blocks.forEach(block -> block.forEach(each -> times[each]++));
    return times;
  }

  /** How often each two treatments stand in one block together; the diagonal is nought. */
  public int[][] together() {
    int[][] times = new int[treatments][treatments];
    for (List<Integer> block : blocks) {
      for (int one : block) {
        for (int other : block) {
          if (one != other) {
            times[one][other]++;
          }
        }
      }
    }
    return times;
  }

  /** How far this design lets treatments be compared within blocks. */
  public BlockEfficiency efficiency() {
    return BlockEfficiency.of(this);
  }
}
