package walebook.kit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;

/**
 * Looks for the shortest length of cloth that pieces come out of: several orders to begin with,
 * then exchanges in the order of the best, kept when the length does not grow. The amount of work
 * is counted, so that a seed gives one plan on any machine.
 */
final class PackStrip {
  /** Fits tried in all. */
  private static final double WORK = 3e7;

  private static final int LEAST_ROUNDS = 60;
  private static final int MOST_ROUNDS = 30_000;

  private final List<CutPiece> pieces;
  private final double width;
  private final LayPieces lay;
  private final double bound;

  private PackStrip(List<CutPiece> pieces, double width, double margin) {
    this.pieces = pieces;
    this.width = width;
    this.lay = new LayPieces(pieces, margin);
    this.bound = boundMm(pieces, width, margin);
  }

  /** The plan; every piece must fit the width. */
  static CuttingPlan of(List<CutPiece> pieces, double width, double margin, long seed) {
    return new PackStrip(List.copyOf(pieces), width, margin).search(margin, new Random(seed));
  }

  /**
   * A length no plan can pass: by area, by the longest piece, and by pieces too wide to lie beside
   * each other.
   */
  static double boundMm(List<CutPiece> pieces, double width, double margin) {
    if (pieces.size() == 1 && !pieces.get(0).turnable()) {
      CutPiece only = pieces.get(0);
      double inRow = Math.floor((width + margin + Skyline.EVEN) / (only.acrossMm() + margin));
      return Math.ceil(only.count() / inRow) * (only.alongMm() + margin) - margin;
    }
    double area = 0;
    double stacked = 0;
    double longest = 0;
    for (CutPiece each : pieces) {
      boolean free = each.turnable();
      double narrow = free ? Math.min(each.acrossMm(), each.alongMm()) : each.acrossMm();
      double least = free ? narrow : each.alongMm();
      area += each.count() * (each.acrossMm() + margin) * (each.alongMm() + margin);
      longest = Math.max(longest, least);
      if (2 * narrow + margin > width + Skyline.EVEN) {
        stacked += each.count() * (least + margin);
      }
    }
    return Math.max(longest, Math.max(area / (width + margin), stacked) - margin);
  }

  private double length(int[] order) {
    lay.order(order);
    return lay.lay(new int[pieces.size()], width, Double.POSITIVE_INFINITY, null);
  }

  private CuttingPlan search(double margin, Random random) {
    int[] best = {};
    double shortest = Double.POSITIVE_INFINITY;
    List<int[]> starts = starts();
    int count = starts.get(0).length;
    int rounds =
        (int)
            Math.max(LEAST_ROUNDS, Math.min(MOST_ROUNDS, WORK / ((double) count * pieces.size())));
    for (int[] start : starts) {
      double length = length(start);
      if (length < shortest) {
        shortest = length;
        best = start;
      }
    }
    int[] now = best.clone();
    double length = shortest;
    for (int round = 0; round < rounds && shortest > bound + Skyline.EVEN; round++) {
      int[] then = now.clone();
      for (int i = random.nextInt(3); i >= 0; i--) {
        swap(then, random);
      }
      double found = length(then);
      // Now and then a step back, so that the search does not end at the first hill.
      if (found <= length + Skyline.EVEN || random.nextInt(400) == 0) {
        now = then;
        length = found;
      }
      if (found < shortest - Skyline.EVEN) {
        shortest = found;
        best = then;
      }
    }
    List<Placed> placed = new ArrayList<>();
    lay.order(best);
    double top = lay.lay(new int[pieces.size()], width, Double.POSITIVE_INFINITY, placed);
    return new CuttingPlan(pieces, width, top, margin, placed);
  }

  /** Exchanges two places drawn at random. */
  static void swap(int[] order, Random random) {
    int one = random.nextInt(order.length);
    int other = random.nextInt(order.length);
    int kept = order[one];
    order[one] = order[other];
    order[other] = kept;
  }

  /** The kind of each piece, the largest area first. */
  static int[] largestFirst(List<CutPiece> pieces) {
    return sorted(pieces, Comparator.comparingDouble(each -> -each.acrossMm() * each.alongMm()));
  }

  /** Largest first, by area, by each side and by the girth. */
  private List<int[]> starts() {
    return List.of(
        largestFirst(pieces),
        sorted(pieces, Comparator.comparingDouble(each -> -each.acrossMm())),
        sorted(pieces, Comparator.comparingDouble(each -> -each.alongMm())),
        sorted(pieces, Comparator.comparingDouble(each -> -each.acrossMm() - each.alongMm())));
  }

  private static int[] sorted(List<CutPiece> pieces, Comparator<CutPiece> by) {
    List<Integer> order = new ArrayList<>();
    for (int kind = 0; kind < pieces.size(); kind++) {
      for (int i = 0; i < pieces.get(kind).count(); i++) {
        order.add(kind);
      }
    }
    order.sort(Comparator.comparing(pieces::get, by));
    return order.stream().mapToInt(Integer::intValue).toArray();
  }
}
