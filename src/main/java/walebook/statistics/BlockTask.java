package walebook.statistics;

import java.util.BitSet;
import java.util.List;
import java.util.function.IntBinaryOperator;

/**
 * What is to be shared out to blocks.
 *
 * @param treatments how many there are, numbered from 0
 * @param shares the blocks, in order
 * @param likeness how much two treatments have in common, not negative; blocks of unlike treatments
 *     are taken where all else is equal
 */
public record BlockTask(int treatments, List<Share> shares, IntBinaryOperator likeness) {
  /**
   * What one block takes.
   *
   * @param held treatments that it has already and keeps, first to last
   * @param more how many it takes beside them; cut to those that are left
   * @param barred treatments that it can't take
   */
  public record Share(List<Integer> held, int more, List<Integer> barred) {
    public Share {
      held = List.copyOf(held);
      barred = List.copyOf(barred);
      if (more < 0) {
        throw new IllegalArgumentException("more must not be negative: " + more);
      }
    }

    /** A share of this size with nothing held and nothing barred. */
    public static Share of(int size) {
      return new Share(List.of(), size, List.of());
    }
  }

  public BlockTask {
    shares = List.copyOf(shares);
    if (treatments < 1) {
      throw new IllegalArgumentException("treatments must be at least 1: " + treatments);
    }
  }

  /** True when every block takes as many, holds nothing and may take anything. */
  boolean isPlain() {
    return !shares.isEmpty()
        && shares.stream()
            .allMatch(
                each ->
                    each.held().isEmpty()
                        && each.barred().isEmpty()
                        && each.more() == shares.get(0).more());
  }

  /** The treatments a block may take beside what it holds. */
  BitSet open(int block) {
    BitSet open = new BitSet(treatments);
    open.set(0, treatments);
    shares.get(block).held().forEach(open::clear);
    shares.get(block).barred().forEach(open::clear);
    return open;
  }
}
