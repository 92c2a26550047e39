package walebook.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/**
 * Blocks developed from a few base blocks: each group element is added in turn. Pairs then meet as
 * often as their difference stands in the base blocks, so the base blocks are looked for whose
 * differences come out most evenly; where all come out alike the design is balanced.
 */
final class Developed {
  private static final int TRIES = 12_000;
  private static final int PATIENCE = 400;

  private final int along;
  private final int across;
  private final int order;
  private final boolean fixedPoint;

  /**
   * Over the group of pairs (modulo {@code along}, modulo {@code across}).
   *
   * @param fixedPoint whether one more treatment stays where it is under every addition
   */
  Developed(int along, int across, boolean fixedPoint) {
    this.along = along;
    this.across = across;
    this.order = along * across;
    this.fixedPoint = fixedPoint;
  }

  BlockDesign of(int blocks, int size, Random random) {
    int bases = blocks / order;
    int withFixed = fixedPoint ? bases * size / (order + 1) : 0;
    int[][] best = {};
    long least = Long.MAX_VALUE;
    int[][] now = {};
    long spread = 0;
    int idle = PATIENCE;
    for (int i = 0; i < TRIES && least > 0; i++) {
      if (idle >= PATIENCE) {
        now = start(bases, size, withFixed, random);
        spread = spread(now);
        idle = 0;
      }
      long then = change(now, spread, random);
      idle = then < spread ? 0 : idle + 1;
      spread = then;
      if (spread < least) {
        least = spread;
        best = copy(now);
      }
    }
    return develop(best);
  }

  private int[][] start(int bases, int size, int withFixed, Random random) {
    int[][] all = new int[bases][];
    for (int i = 0; i < bases; i++) {
      int own = i < withFixed ? size - 1 : size;
      all[i] = Arrays.copyOf(BlockState.shuffled(order, random), own);
    }
    return all;
  }

  /** Tries another element in one place; keeps it when differences are no less even. */
  private long change(int[][] bases, long spread, Random random) {
    int[] base = bases[random.nextInt(bases.length)];
    int with = random.nextInt(order);
    for (int each : base) {
      if (each == with) {
        return spread;
      }
    }
    int at = random.nextInt(base.length);
    int old = base[at];
    base[at] = with;
    long then = spread(bases);
    if (then > spread) {
      base[at] = old;
      return spread;
    }
    return then;
  }

  /** How unevenly differences come out; nought when each stands as often as any other. */
  private long spread(int[][] bases) {
    long[] times = new long[order];
    long all = 0;
    for (int[] base : bases) {
      for (int one : base) {
        for (int other : base) {
          if (one != other) {
            times[minus(one, other)]++;
            all++;
          }
        }
      }
    }
    long squares = 0;
    for (int i = 1; i < order; i++) {
      squares += times[i] * times[i];
    }
    return squares * (order - 1) - all * all;
  }

  private BlockDesign develop(int[][] bases) {
    List<List<Integer>> blocks = new ArrayList<>();
    int size = bases[bases.length - 1].length;
    for (int[] base : bases) {
      for (int by = 0; by < order; by++) {
        List<Integer> block = new ArrayList<>();
        for (int each : base) {
          block.add(plus(each, by));
        }
        if (block.size() < size) {
          block.add(order);
        }
        blocks.add(block);
      }
    }
    return new BlockDesign(fixedPoint ? order + 1 : order, blocks);
  }

  private int plus(int a, int b) {
    return (a / across + b / across) % along * across + (a % across + b % across) % across;
  }

  private int minus(int a, int b) {
    int row = Math.floorMod(a / across - b / across, along);
    return row * across + Math.floorMod(a % across - b % across, across);
  }

  private static int[][] copy(int[][] bases) {
    int[][] same = new int[bases.length][];
    for (int i = 0; i < bases.length; i++) {
      same[i] = bases[i].clone();
    }
    return same;
  }
}
