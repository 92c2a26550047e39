package walebook.statistics;

import java.util.Arrays;

/**
 * Number, mean and scatter of the values in each cell of block and level, rising by block and then
 * by level; in plain arrays, since of many blocks there are very many.
 */
final class Cells {
  private final int[] block;
  private final int[] level;
  private final int[] n;
  private final double[] mean;
  private final double[] squares;
  private int size;

  Cells(int room) {
    block = new int[room];
    level = new int[room];
    n = new int[room];
    mean = new double[room];
    squares = new double[room];
  }

  /**
   * Sorted shares, but for those without a value.
   *
   * @param numbers each block's number among those that have a value
   */
  static Cells ofShares(Shares shares, int[] numbers, int levels) {
    long[] order = new long[shares.size()];
    int filled = 0;
    for (int i = 0; i < shares.size(); i++) {
      if (shares.values(i).n() > 0) {
        long cell = (long) numbers[shares.block(i)] * levels + shares.level(i);
        order[filled++] = cell * shares.size() + i;
      }
    }
    Arrays.sort(order, 0, filled);
    Cells cells = new Cells(filled);
    for (int i = 0; i < filled; i++) {
      int share = (int) (order[i] % shares.size());
      cells.add(numbers[shares.block(share)], shares.level(share), shares.values(share).summary());
    }
    return cells;
  }

  void add(int ofBlock, int atLevel, Summary values) {
    block[size] = ofBlock;
    level[size] = atLevel;
    n[size] = values.n();
    mean[size] = values.mean();
    squares[size] = values.sumOfSquares();
    size++;
  }

  int size() {
    return size;
  }

  int block(int cell) {
    return block[cell];
  }

  int level(int cell) {
    return level[cell];
  }

  int n(int cell) {
    return n[cell];
  }

  double mean(int cell) {
    return mean[cell];
  }

  /** Squared deviations from the cell's mean, summed up. */
  double squares(int cell) {
    return squares[cell];
  }
}
