package walebook.kit;

import java.util.List;

/**
 * Pieces laid on a cloth or a scrap.
 *
 * @param pieces the kinds of pieces, by number
 * @param acrossMm usable width
 * @param alongMm length, taken up or there
 * @param marginMm kept between any two pieces
 * @param placed every piece that came out
 */
public record CuttingPlan(
    List<CutPiece> pieces, double acrossMm, double alongMm, double marginMm, List<Placed> placed) {
  public CuttingPlan {
    pieces = List.copyOf(pieces);
    placed = List.copyOf(placed);
  }

  /** The share of the cloth that is in no piece, 0 to 100. */
  public double wastePercent() {
    double used = placed.stream().mapToDouble(each -> each.acrossMm() * each.alongMm()).sum();
    return alongMm > 0 ? 100 * (1 - used / (acrossMm * alongMm)) : 0;
  }

  /** How many of a kind lie here. */
  public int count(int piece) {
    return (int) placed.stream().filter(each -> each.piece() == piece).count();
  }
}
