package walebook.statistics;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Designs put together by rule, for sizes that a rule fits: square lattices (Yates, J. Agric. Sci.
 * 26 (1936)) and designs developed from base blocks over a group (Bose, Ann. Eugenics 9 (1939)).
 */
final class MadeDesigns {
  private MadeDesigns() {}

  /**
   * What can be made.
   *
   * @param size treatments in each block
   */
  static List<BlockDesign> of(int treatments, int blocks, int size, Random random) {
    List<BlockDesign> made = new ArrayList<>();
    if (size < 2 || size >= treatments) {
      return made;
    }
    int side = (int) Math.round(Math.sqrt(treatments));
    boolean lattice =
        side * side == treatments && size == side && blocks % side == 0 && isField(side);
    if (lattice && blocks / side <= side + 1) {
      made.add(lattice(side, blocks / side));
    }
    for (int along = 1; along * along <= treatments; along++) {
      if (treatments % along == 0 && blocks % treatments == 0) {
        made.add(new Developed(along, treatments / along, false).of(blocks, size, random));
      }
    }
    int rest = treatments - 1;
    if (rest > 1 && blocks % rest == 0 && blocks / rest * size % treatments == 0) {
      made.add(new Developed(1, rest, true).of(blocks, size, random));
    }
    return made;
  }

  private static boolean isField(int side) {
    return side == 2 || side == 3 || side == 4 || side == 5 || side == 7;
  }

  /** Rows of a square, its columns, then the lines of each slope: so many sets of parallels. */
  private static BlockDesign lattice(int side, int sets) {
    List<List<Integer>> blocks = new ArrayList<>();
    for (int set = 0; set < sets; set++) {
      for (int line = 0; line < side; line++) {
        List<Integer> block = new ArrayList<>();
        for (int x = 0; x < side; x++) {
          // The last set are the upright lines, which have no slope.
          int column = set == side ? line : x;
          int row = set == side ? x : plus(side, times(side, set, x), line);
          block.add(row * side + column);
        }
        blocks.add(block);
      }
    }
    return new BlockDesign(side * side, blocks);
  }

  private static int plus(int order, int a, int b) {
    return order == 4 ? a ^ b : (a + b) % order;
  }

  /** In the field of four, x² = x + 1. */
  private static int times(int order, int a, int b) {
    if (order != 4) {
      return a * b % order;
    }
    if (a == 0 || b == 0) {
      return 0;
    }
    return (a - 1 + b - 1) % 3 + 1;
  }
}
