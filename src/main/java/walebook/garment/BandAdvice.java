package walebook.garment;

import java.util.List;
import java.util.function.Consumer;
import walebook.quantity.Show;
import walebook.working.Message;
import walebook.working.Verdict;

/** What to do about a band that pulls, stands away or would not pass. */
final class BandAdvice {
  private final BandChoice band;
  private final List<Check> checks;

  private BandAdvice(BandChoice band, List<Check> checks) {
    this.band = band;
    this.checks = checks;
  }

  static void of(BandChoice band, GarmentRows rows, List<Check> checks, Consumer<Advice> to) {
    BandAdvice advice = new BandAdvice(band, checks);
    String edge = Message.name(band.edge().sayKey());
    if (advice.fails(Check.Kind.BAND_OVER)) {
      to.accept(advice.over(edge));
    }
    GrainStretch stretch = band.stretch();
    if (advice.fails(Check.Kind.BAND) && stretch != null && stretch.percent() > 0) {
      double limit = ComfortBand.limit(rows.comfort(), Wear.DAY);
      double most = limit / 100 * sure(stretch);
      to.accept(
          change("garment.advice.band-strain", edge, Show.fixed(ceil(1 / (1 + most / 100)), 2)));
    }
    if (advice.fails(Check.Kind.BAND_FLAT)) {
      String flat = Show.fixed(band.plan().flatRatio(band.turn()), 2);
      to.accept(change("garment.advice.band-longer", edge, flat));
    }
  }

  /** The least length whose reach is the girth to pass: b = P ÷ (1 + S ÷ 100). */
  private Advice over(String edge) {
    GrainStretch stretch = band.stretch();
    Double over = band.overMm();
    double least =
        stretch == null || over == null ? 0 : Math.ceil(Ease.leastFinished(over, sure(stretch)));
    BandPlan plan = band.plan();
    if (least > plan.openingMm()) {
      return change("garment.advice.band-opening", edge, Show.mm(least));
    }
    return change(
        "garment.advice.band-over",
        edge,
        Show.mm(plan.lengthMm()),
        Show.mm(least),
        Show.fixed(ceil(least / plan.openingMm()), 2));
  }

  private static double sure(GrainStretch stretch) {
    return Math.max(0, stretch.percent() - stretch.expanded());
  }

  /** A ratio rounded so that what it is to reach is reached. */
  private static double ceil(double ratio) {
    return Math.ceil(ratio * 100) / 100;
  }

  private static Advice change(String key, String... args) {
    return Advice.of(Advice.Action.CHANGE_BAND, key, args);
  }

  private boolean fails(Check.Kind kind) {
    return checks.stream()
        .anyMatch(
            check ->
                check.kind() == kind
                    && check.verdict() == Verdict.NOT_MET
                    && check.about().args().contains(Message.name(band.edge().sayKey())));
  }
}
