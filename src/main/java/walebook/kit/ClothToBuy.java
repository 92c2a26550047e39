package walebook.kit;

import java.util.ArrayList;
import java.util.List;
import walebook.cloth.CutLength;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Measured;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Working;

/**
 * The length of a cloth to buy for pieces, and how they are laid.
 *
 * @param name of the cloth
 * @param roll as it is bought
 * @param plan on the washed cloth
 * @param buyMm to buy, before washing, rounded up to what is sold
 */
public record ClothToBuy(String name, Roll roll, CuttingPlan plan, double buyMm, Working working) {
  /** More pieces than this are no class's kit. */
  public static final int MOST_PIECES = 2000;

  /**
   * Works out the length.
   *
   * @param name of the cloth
   * @param pieces sizes as cut, after the wash
   * @param seed the same seed lays the same plan
   */
  public static Answer<ClothToBuy> of(String name, List<CutPiece> pieces, Roll roll, long seed) {
    List<Problem> found = new ArrayList<>(roll.problems());
    int count = pieces.stream().mapToInt(CutPiece::count).sum();
    if (pieces.isEmpty()) {
      found.add(Problem.refuse("kit.no-pieces", Place.field("pieces"), "0", "1"));
    } else if (count > MOST_PIECES) {
      found.add(
          Problem.refuse(
              "kit.too-many-pieces",
              Place.field("pieces"),
              String.valueOf(count),
              String.valueOf(MOST_PIECES)));
    }
    if (!found.isEmpty()) {
      return Answer.bad(found);
    }
    for (CutPiece each : pieces) {
      if (!each.fits(roll.washedMm(), Double.POSITIVE_INFINITY)) {
        found.add(
            Problem.refuse(
                "kit.too-narrow",
                Place.field("cloth-width"),
                Show.mm(Math.rint(roll.washedMm() * 10) / 10),
                each.name() + ", " + Show.mm(each.acrossMm())));
      }
    }
    if (!found.isEmpty()) {
      return Answer.bad(found);
    }
    CuttingPlan plan = PackStrip.of(pieces, roll.washedMm(), roll.marginMm(), seed);
    double unwashed = CutLength.mm(plan.alongMm(), roll.alongChangePercent());
    double buy = Math.ceil(unwashed / roll.stepMm() - 1e-9) * roll.stepMm();
    return Answer.good(
        new ClothToBuy(name, roll, plan, buy, working(name, count, plan, roll, unwashed, buy)));
  }

  private static Working working(
      String name, int count, CuttingPlan plan, Roll roll, double unwashed, double buy) {
    double bound = PackStrip.boundMm(plan.pieces(), plan.acrossMm(), plan.marginMm());
    return Working.named("cloth-to-buy", Message.of("kit.cloth.title", name))
        .step(
            Message.of("kit.cloth.step-width"),
            "W = usable × (1 + D ÷ 100)",
            "%s × (1 + (%s) ÷ 100) = %s"
                .formatted(
                    Show.upTo(roll.usableMm(), 1),
                    Show.upTo(roll.acrossChangePercent(), 2),
                    mm(plan.acrossMm())))
        .step(
            Message.of("kit.cloth.step-least"),
            "L ≥ Σ (a + m)(b + m) ÷ (W + m) − m, L ≥ b, L ≥ rows × (b + m) − m",
            "L ≥ " + mm(bound))
        .step(
            Message.of("kit.cloth.step-laid", String.valueOf(count)),
            "L",
            "%s (%s)".formatted(mm(plan.alongMm()), Show.percent(plan.wastePercent())))
        .step(
            Message.of("kit.cloth.step-wash"),
            "cut = L ÷ (1 + D ÷ 100)",
            "%s ÷ (1 + (%s) ÷ 100) = %s"
                .formatted(
                    Show.upTo(plan.alongMm(), 1),
                    Show.upTo(roll.alongChangePercent(), 2),
                    mm(unwashed)))
        .result(Measured.of(buy / Unit.METRE.inBase(), Unit.METRE))
        .assume(
            roll.changes()
                ? Message.of("kit.assume.washed-first")
                : Message.of("kit.assume.no-change", name))
        .assume(Message.of("kit.assume.edges"))
        .source(Source.Kind.ESTIMATE, "best fit on a skyline, improved by exchanges")
        .source(Source.Kind.STANDARD, "ISO 5077, its formula turned round")
        .says(
            Message.of(
                "kit.cloth.says",
                Show.upTo(buy / Unit.METRE.inBase(), 2),
                String.valueOf(count),
                Show.percent(plan.wastePercent())));
  }

  private static String mm(double value) {
    return Show.mm(Math.rint(value * 10) / 10);
  }
}
