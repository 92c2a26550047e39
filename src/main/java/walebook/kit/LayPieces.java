package walebook.kit;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Lays pieces on one rectangle, always on the lowest place: the piece that fits it best, of equals
 * the one that comes first in an order. (Best fit on a skyline; Burke, Kendall and Whitwell, Oper.
 * Res. 52 (2004), with the scores of Leung, Zhang and Sim, Eur. J. Oper. Res. 215 (2011); from
 * memory.)
 */
final class LayPieces {
  private static final int NONE = -1;

  private final double[] across;
  private final double[] along;
  private final boolean[] turnable;
  private final double margin;
  private int[][] places = {};

  /** Sizes grow by the margin, and so does the rectangle, so that none is kept at its edges. */
  LayPieces(List<CutPiece> pieces, double margin) {
    int kinds = pieces.size();
    this.margin = margin;
    this.across = new double[kinds];
    this.along = new double[kinds];
    this.turnable = new boolean[kinds];
    for (int i = 0; i < kinds; i++) {
      across[i] = pieces.get(i).acrossMm() + margin;
      along[i] = pieces.get(i).alongMm() + margin;
      turnable[i] = pieces.get(i).turnable() && Math.abs(across[i] - along[i]) > Skyline.EVEN;
    }
  }

  /** Sets the order: the kind of each piece, first to last. */
  void order(int[] kinds) {
    int[] counts = new int[across.length];
    for (int kind : kinds) {
      counts[kind]++;
    }
    places = new int[across.length][];
    for (int i = 0; i < counts.length; i++) {
      places[i] = new int[counts[i]];
      counts[i] = 0;
    }
    for (int i = 0; i < kinds.length; i++) {
      places[kinds[i]][counts[kinds[i]]++] = i;
    }
  }

  /**
   * Lays what fits.
   *
   * @param used how many of each kind are laid already; grows
   * @param most length of the rectangle, without end for a cloth from the roll
   * @param laid takes down where each piece lies; null when only the length is asked for
   * @return the length taken up
   */
  double lay(int[] used, double width, double most, @Nullable List<Placed> laid) {
    Skyline line = new Skyline(width + margin);
    double limit = most + margin + Skyline.EVEN;
    double top = 0;
    while (true) {
      int best = best(line, used, limit);
      if (best == NONE) {
        if (!line.raise()) {
          return Math.max(0, top - margin);
        }
        continue;
      }
      int kind = best >> 1;
      boolean turned = (best & 1) == 1;
      double w = turned ? along[kind] : across[kind];
      double h = turned ? across[kind] : along[kind];
      double y = line.y();
      double x = line.lay(w, h, isRight(line, h));
      used[kind]++;
      top = Math.max(top, y + h);
      if (laid != null) {
        laid.add(new Placed(kind, x, y, w - margin, h - margin));
      }
    }
  }

  private static boolean isRight(Skyline line, double h) {
    boolean left = Math.abs(h - line.leftWall()) < Skyline.EVEN;
    boolean right = Math.abs(h - line.rightWall()) < Skyline.EVEN;
    return (left || right) ? !left : line.rightWall() > line.leftWall();
  }

  /** Kind times two, plus one when turned. */
  private int best(Skyline line, int[] used, double limit) {
    int best = NONE;
    int highest = -1;
    int first = Integer.MAX_VALUE;
    for (int kind = 0; kind < across.length; kind++) {
      if (used[kind] >= places[kind].length) {
        continue;
      }
      int place = places[kind][used[kind]];
      for (int turned = 0; turned <= (turnable[kind] ? 1 : 0); turned++) {
        double w = turned == 1 ? along[kind] : across[kind];
        double h = turned == 1 ? across[kind] : along[kind];
        int score = score(line, w, h, limit);
        if (score > highest || (score >= 0 && score == highest && place < first)) {
          highest = score;
          first = place;
          best = 2 * kind + turned;
        }
      }
    }
    return best;
  }

  private static int score(Skyline line, double w, double h, double limit) {
    double spare = line.gap() - w;
    if (spare < -Skyline.EVEN || line.y() + h > limit) {
      return NONE;
    }
    double left = line.leftWall();
    double right = line.rightWall();
    boolean level = Math.abs(h - left) < Skyline.EVEN || Math.abs(h - right) < Skyline.EVEN;
    if (spare < Skyline.EVEN) {
      return level ? 4 : h > Math.min(left, right) ? 3 : 2;
    }
    return level ? 1 : 0;
  }
}
