package walebook.statistics;

import java.util.Arrays;

/**
 * Number, mean and scatter of each block's values at each level, blocks and levels by number: all
 * that a fit by least squares needs, in some fifty bytes for each two that came together, whatever
 * came of them.
 */
public final class Shares {
  private static final int FEW = 16;

  /** Places of shares, at most half of them taken; 0 where none is, else the share's number + 1. */
  private int[] table = new int[2 * FEW];

  private int[] block = new int[FEW];
  private int[] level = new int[FEW];
  private int[] n = new int[FEW];
  private double[] mean = new double[FEW];
  private double[] squares = new double[FEW];
  private double[] least = new double[FEW];
  private double[] greatest = new double[FEW];
  private int size;

  /** Takes a block and a level that came together. */
  public interface Each {
    /** Takes one. */
    void take(int block, int level);
  }

  /** One more value, finite. */
  public void add(int ofBlock, int atLevel, double value) {
    int share = share(ofBlock, atLevel);
    Moments more = values(share);
    more.add(value);
    put(share, more);
  }

  /** More values; with none the two have still come together. */
  public void add(int ofBlock, int atLevel, Moments values) {
    int share = share(ofBlock, atLevel);
    Moments more = values(share);
    more.addAll(values);
    put(share, more);
  }

  private void put(int share, Moments values) {
    n[share] = values.n();
    mean[share] = values.mean();
    squares[share] = values.squares();
    least[share] = values.least();
    greatest[share] = values.greatest();
  }

  private int share(int ofBlock, int atLevel) {
    int place = place(ofBlock, atLevel);
    if (table[place] > 0) {
      return table[place] - 1;
    }
    if (size == block.length) {
      grow();
      place = place(ofBlock, atLevel);
    }
    table[place] = size + 1;
    block[size] = ofBlock;
    level[size] = atLevel;
    put(size, new Moments());
    return size++;
  }

  private int place(int ofBlock, int atLevel) {
    int hash = (ofBlock * 31 + atLevel) * 0x9E3779B9;
    int place = (hash ^ (hash >>> 15)) & (table.length - 1);
    while (table[place] > 0
        && (block[table[place] - 1] != ofBlock || level[table[place] - 1] != atLevel)) {
      place = (place + 1) & (table.length - 1);
    }
    return place;
  }

  private void grow() {
    int room = 2 * size;
    block = Arrays.copyOf(block, room);
    level = Arrays.copyOf(level, room);
    n = Arrays.copyOf(n, room);
    mean = Arrays.copyOf(mean, room);
    squares = Arrays.copyOf(squares, room);
    least = Arrays.copyOf(least, room);
    greatest = Arrays.copyOf(greatest, room);
    table = new int[2 * room];
    for (int i = 0; i < size; i++) {
      table[place(block[i], level[i])] = i + 1;
    }
  }

  /**
   * The same with other numbers for levels.
   *
   * @param numbers what each is called now: those that get one number come together, those below 0
   *     are left out
   */
  public Shares atLevels(int[] numbers) {
    Shares other = new Shares();
    for (int i = 0; i < size; i++) {
      if (numbers[level[i]] >= 0) {
        other.add(block[i], numbers[level[i]], values(i));
      }
    }
    return other;
  }

  /** Every two that came together, with values or without. */
  public void each(Each to) {
    for (int i = 0; i < size; i++) {
      to.take(block[i], level[i]);
    }
  }

  int size() {
    return size;
  }

  int block(int share) {
    return block[share];
  }

  int level(int share) {
    return level[share];
  }

  Moments values(int share) {
    return new Moments(n[share], mean[share], squares[share], least[share], greatest[share]);
  }
}
