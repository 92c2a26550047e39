package walebook.garment;

import java.util.List;
import java.util.function.Consumer;
import walebook.quantity.Show;
import walebook.quantity.Unit;
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
    boolean over = advice.fails(Check.Kind.BAND_OVER);
    boolean strain = advice.fails(Check.Kind.BAND);
    if (over || strain || advice.fails(Check.Kind.BAND_FLAT)) {
      to.accept(advice.ratio(rows, over, strain));
    }
  }

  /** One advice that all checks of the band agree on, or that there is none. */
  private Advice ratio(GarmentRows rows, boolean over, boolean strain) {
    String edge = Message.name(band.edge().sayKey());
    BandPlan plan = band.plan();
    double passing = passing();
    if (over && passing > 1) {
      return change(
          "garment.advice.band-opening", edge, Show.mm(Math.ceil(passing * plan.openingMm())));
    }
    double flat = plan.flatRatio(band.turn());
    BandFit lies =
        rows.bandFits().stream()
            .filter(fit -> fit.key().equals("lies"))
            .findFirst()
            .orElseThrow(() -> new IllegalArgumentException("no row for a band that lies flat"));
    double comfortable = comfortable(rows);
    double shortest = Math.max(passing, comfortable);
    double least = ceil(Math.max(shortest, flat + lies.from()));
    if (least - flat >= lies.below()) {
      double most = Math.floor((flat + lies.below()) * 100 - 1e-6) / 100;
      return change("garment.advice.band-none", edge, Show.fixed(most, 2), Show.fixed(flat, 2));
    }
    if (over || (strain && passing > comfortable)) {
      return change(
          "garment.advice.band-over",
          edge,
          Show.length(plan.lengthMm(), Unit.MM),
          Show.mm(Math.ceil(Math.max(shortest, flat + lies.from()) * plan.openingMm() - 1e-6)),
          Show.fixed(least, 2));
    }
    if (strain) {
      return change("garment.advice.band-strain", edge, Show.fixed(least, 2));
    }
    double near = Math.round(flat * 100) / 100.0;
    return near >= shortest
        ? change("garment.advice.band-longer", edge, Show.fixed(near, 2))
        : change("garment.advice.band-near-flat", edge, Show.fixed(least, 2));
  }

  /** The least ratio whose reach is the girth to pass, in whole mm: b = P ÷ (1 + S ÷ 100). */
  private double passing() {
    GrainStretch stretch = band.stretch();
    Double over = band.overMm();
    return stretch == null || over == null
        ? 0
        : Math.ceil(Ease.leastFinished(over, sure(stretch))) / band.plan().openingMm();
  }

  /** The least ratio whose strain keeps to the comfortable share. */
  private double comfortable(GarmentRows rows) {
    GrainStretch stretch = band.stretch();
    return stretch == null
        ? 0
        : 1 / (1 + ComfortBand.limit(rows.comfort(), Wear.DAY) / 100 * sure(stretch) / 100);
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
